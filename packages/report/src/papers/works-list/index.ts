export { worksListCsv } from "./csv.ts";
export { worksListXlsx } from "./xlsx.ts";
