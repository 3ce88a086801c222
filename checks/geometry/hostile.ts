import { Reckoner } from "@good-grounds/core";
import { placingOutOfReach, readScene } from "@good-grounds/judgement";
let st=7; const rnd=()=>{st=(Math.imul(st,1664525)+1013904223)>>>0;return st/2**32};
function scene(nc:number, spread:number,ns:number,np:number,nb:number){return { tolerance: 0.02, objects: 3, attendance: "skilled-control",
 surfaces: Array.from({length:ns},(_,i)=>({name:`s${i}`,height:i*0.01,solid:true,entries:[[0.5,0]],outline:Array.from({length:nc},(_,k)=>{const a=k/nc*2*Math.PI, r=(k%2?2:1); return [r*Math.cos(a),r*Math.sin(a)]})})),
 parts: Array.from({length:np},(_,i)=>({name:`p${i}`,potential:`L${i}`,live:true,shape:{kind:"segment",from:[rnd()*spread-spread/2,rnd()*spread-spread/2,rnd()*3],to:[rnd()*spread-spread/2,rnd()*spread-spread/2,rnd()*3]}})),
 barriers: Array.from({length:nb},(_,i)=>{const x=rnd()*6-3,y=rnd()*6-3;return {name:`b${i}`,from:[x,y],to:[x+rnd()-.5,y+rnd()-.5],bottom:"structure",top:"structure",protection:"ip2x",keepsBack:i%2===0,platform:false,openings:[]}})};}
for (const [nc,sp,ns,np,nb] of [[6,8,5,100,60],[6,8,60,8,60],[200,8,8,60,60]] as const){const r=readScene(scene(nc,sp,ns,np,nb)); if(!r.ok){console.log(r.issues.slice(0,2));continue;} const t=performance.now(); placingOutOfReach(r.scene,new Reckoner(false)); console.log(nc,sp,ns,np,nb,(performance.now()-t).toFixed(0)+" ms");}
