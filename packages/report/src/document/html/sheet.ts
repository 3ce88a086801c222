import type { Document } from "../model.ts";

/** The style sheet: warm paper, ink, one copper accent; print on white. Everything reads without it. */
export function sheetOf({ running }: Document): string {
  return SHEET + (running.draft === "" ? "" : DRAFT);
}

const SHEET = `
:root{--paper:#fbf8f2;--ink:#1d2a44;--quiet:#565f71;--rule:#c9c5bb;--copper:#8f4518;color-scheme:light}
*{box-sizing:border-box}
body{margin:0 auto;max-width:60rem;padding:0 1rem 3rem;background:var(--paper);color:var(--ink);font:1rem/1.5 "Source Sans 3","Source Sans Pro",system-ui,sans-serif;font-variant-numeric:lining-nums tabular-nums;overflow-wrap:break-word}
.skip{position:absolute;left:-99rem}
.skip:focus{position:static;display:inline-block;padding:.5rem}
.running{color:var(--quiet);font-size:.85rem;display:flex;flex-wrap:wrap;gap:0 1.5rem}
.running p{margin:.6rem 0}
.running .notice{color:var(--copper);font-weight:700}
main:focus{outline:none}
h1{font-size:1.7rem;line-height:1.2;margin:0 0 1rem}
h2{font-size:1.35rem;line-height:1.25;margin:2.4rem 0 .8rem;padding-bottom:.25rem;border-bottom:2px solid var(--ink)}
h3{font-size:1.1rem;margin:1.6rem 0 .5rem}
h4{font-size:1rem;margin:1.2rem 0 .4rem}
h2,h3,h4{break-after:avoid}
.over{color:var(--copper);font-weight:600;margin:1rem 0 .2rem}
p{margin:.5rem 0}
.small,small,figcaption{font-size:.875rem;color:var(--quiet)}
.lead{font-weight:600}
.large{font-size:1.6rem;font-weight:700;line-height:1.2;margin:.1rem 0 .6rem}
.quiet,.beside>.beside,h3 .beside{color:var(--quiet)}
h3 .beside{font-weight:400;font-size:.875rem;margin-left:.6rem}
em.gap{font-style:italic}
.alert{color:var(--copper)}
.tag{display:inline-block;border:1px solid var(--quiet);border-radius:2px;padding:0 .25rem;font-size:.8rem;line-height:1.3}
ul,ol{padding-left:1.3rem;margin:.4rem 0}
li{margin:.25rem 0}
li::marker{color:var(--copper)}
ol.own{list-style:none;padding-left:0}
ol.own>li{display:grid;grid-template-columns:2.2rem 1fr}
ol.own>li>*{grid-column:2}
ol.own>li>.number{grid-column:1;grid-row:1/span 99;font-weight:600}
dl.facts{margin:.5rem 0}
dl.facts>div{display:grid;grid-template-columns:minmax(7rem,11rem) 1fr;gap:0 1rem;padding:.15rem 0}
dl.two{display:grid;grid-template-columns:repeat(auto-fit,minmax(18rem,1fr));gap:0 2rem}
dt{color:var(--quiet)}
dd{margin:0}
.columns{display:grid;grid-template-columns:repeat(auto-fit,minmax(16rem,1fr));gap:0 2rem}
.wide{overflow-x:auto;margin:.6rem 0 1rem}
table{border-collapse:collapse;width:100%;font-size:.9rem;border-top:2px solid var(--ink)}
table.big{font-size:1.3rem}
caption{text-align:left;font-weight:600;padding:.3rem 0}
th,td{text-align:left;vertical-align:top;padding:.3rem .5rem .3rem 0;border-bottom:1px solid var(--rule)}
tbody th{font-weight:400}
th.right,td.right{text-align:right}
th.centre,td.centre{text-align:center}
.frame{margin:1rem 0;padding:.3rem .9rem}
.stated{border-left:5px solid var(--ink)}
.aside{border-left:3px solid var(--copper)}
.frame.alert{border:3px solid var(--copper);color:var(--ink);font-weight:600}
figure{margin:.8rem 0}
img,svg{max-width:100%;height:auto}
.drawn,.inline{display:inline-block;max-width:100%}
.drawn svg,.inline svg{display:block;width:100%}
.inline{vertical-align:-.15em}
div.beside{display:flex;flex-wrap:wrap;gap:0 1.5rem;align-items:flex-start}
div.beside>div{flex:1 1 16rem}
.argument{list-style:none;padding-left:0;border-left:1px solid var(--rule)}
.argument li{padding-left:.6rem}
${[1, 2, 3, 4, 5, 6, 7, 8].map((depth) => `.argument .d${depth}{margin-left:${depth * 0.8}rem}`).join("")}
.signature{margin:1rem 0;break-inside:avoid}
.signature .drawn{width:14rem}
.signature .line{display:block;width:18rem;max-width:100%;min-height:3rem;padding-top:1.2rem;font-style:italic;border-bottom:1px solid var(--ink)}
nav ul{list-style:none;padding:0;display:flex;flex-wrap:wrap;gap:.1rem 1.2rem}
a{color:var(--ink)}
a:focus-visible,.wide:focus-visible{outline:3px solid var(--copper);outline-offset:2px}
@media print{
@page{size:A4;margin:18mm}
body{background:#fff;max-width:none;padding:0;font-size:9.5pt}
.skip,nav{display:none}
.break{break-after:page}
.wide{overflow:visible}
tr,figure,.together{break-inside:avoid}
thead{display:table-header-group}
}
`;

const DRAFT = `
.running{position:sticky;top:0;background:var(--paper)}
footer.running{position:static}
`;
