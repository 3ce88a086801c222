import { execFileSync } from "node:child_process";
import type { Sample } from "../../packages/readings/src/earlier/trend/line.ts";
import { PYTHON } from "../tools.ts";

/** One question: a line through samples, and the band of the next reading. */
export interface Asked {
  readonly samples: readonly Sample[];
  readonly time: number;
  readonly deviation: number;
  readonly reach: number;
}

export interface Answer {
  readonly start: number;
  readonly slope: number;
  readonly deviance: number;
  readonly low: number;
  readonly high: number;
}

const PROGRAM = `
import json, sys
import numpy as np
import statsmodels.api as sm
from scipy import optimize, special, stats
asked = json.load(sys.stdin)

def weighted(one):
    t = np.array([s["time"] for s in one["samples"]]); y = np.array([s["level"] for s in one["samples"]])
    sd = np.array([s["deviation"] for s in one["samples"]])
    fit = sm.WLS(y, sm.add_constant(t), weights=sd ** -2.0).fit(cov_type="fixed scale", cov_kwds={"scale": 1.0})
    x = np.array([1.0, one["time"]])
    half = one["reach"] * np.sqrt(one["deviation"] ** 2 + x @ fit.cov_params() @ x)
    centre = float(x @ fit.params)
    return {"start": float(fit.params[0]), "slope": float(fit.params[1]),
            "deviance": float(np.sum(((y - fit.fittedvalues) / sd) ** 2)), "low": centre - half, "high": centre + half}

def deviance(p, one, extra):
    total = 0.0
    for s in one["samples"] + extra:
        z = (p[0] + p[1] * s["time"] - s["level"]) / s["deviation"]
        total += z * z if s["bound"] == "exact" else -2 * special.log_ndtr(z if s["bound"] == "above" else -z)
    return total

def least(one, extra, start):
    return optimize.minimize(deviance, start, args=(one, extra), method="Nelder-Mead",
                             options={"xatol": 1e-8, "fatol": 1e-10, "maxiter": 20000, "maxfev": 20000})

def censored(one):
    y = np.mean([s["level"] for s in one["samples"]])
    best = least(one, [], [y, 0.0])
    centre = best.x[0] + best.x[1] * one["time"]
    def over(level):
        extra = [{"time": one["time"], "level": level, "deviation": one["deviation"], "bound": "exact"}]
        return least(one, extra, best.x).fun - best.fun - one["reach"] ** 2
    def end(sign):
        far = one["deviation"]
        while over(centre + sign * far) < 0:
            far *= 2
            if far > 1e3: return None
        return float(optimize.brentq(lambda d: over(centre + sign * d), 0, far, xtol=1e-6))
    down, up = end(-1), end(1)
    return {"start": float(best.x[0]), "slope": float(best.x[1]), "deviance": float(best.fun),
            "low": None if down is None else centre - down, "high": None if up is None else centre + up}

json.dump({"weighted": [weighted(one) for one in asked["weighted"]],
           "censored": [censored(one) for one in asked["censored"]],
           "student": [float(stats.t.ppf((1 + a) / 2, f)) for a, f in asked["student"]]}, sys.stdout)
`;

/** Asks statsmodels (weighted lines), scipy (lines through censored readings, Student's t) in one process. */
export function askOutside(asked: {
  readonly weighted: readonly Asked[];
  readonly censored: readonly Asked[];
  readonly student: readonly (readonly [assurance: number, freedom: number])[];
}): {
  readonly weighted: readonly Answer[];
  readonly censored: readonly Answer[];
  readonly student: readonly number[];
} {
  return JSON.parse(execFileSync(PYTHON, ["-c", PROGRAM], { input: JSON.stringify(asked), encoding: "utf8" }));
}
