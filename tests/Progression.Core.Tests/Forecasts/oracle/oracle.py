"""An independent reckoning of forecasts, for the tests to compare with.

Written from the formulas, not from the C#: one dense Gaussian over (readings, weeks asked for), conditioned by numpy's general solver; quantiles of
the mixtures by scipy's root finder. Run:  python3 oracle.py > oracle.json   (numpy and scipy are needed; their versions stand in the output.)
"""
import itertools
import json
import platform

import numpy as np
import scipy
from scipy.optimize import brentq
from scipy.stats import norm

WEEKS = [0.5, 6.0, 12.0, 26.0]


def curve_moments(curve, rate, times, log):
    """Mean vector and covariance matrix of the true course at the times, before any reading."""
    level = np.array([curve["early"]["value"], curve["late"]["value"]])
    level = np.log(level) if log else level
    g = lambda t: np.exp(-np.asarray(t) / rate)
    t1, t2 = curve["early"]["week"], curve["late"]["week"]
    h = (g(t1) - g(times)) / (g(t1) - g(t2))
    design = np.stack([1 - h, h], axis=1)
    s1, s2 = curve["early"]["sd"], curve["late"]["sd"]
    spread = np.array([[s1 * s1, curve["correlation"] * s1 * s2], [curve["correlation"] * s1 * s2, s2 * s2]])
    gap = np.abs(np.subtract.outer(times, times))
    return design @ level, design @ spread @ design.T + curve["misfit_sd"] ** 2 * np.exp(-gap / curve["misfit_weeks"])


def reckon(case):
    log = case["scale"] == "logarithmic"
    series = case["series"]
    readings = [(i, r) for i, s in enumerate(series) for r in s["readings"]]
    y = np.array([np.log(r["value"]) if log else r["value"] for _, r in readings], float)
    m = len(WEEKS)
    parts = []
    for choice in itertools.product(*[s["curve"]["rates"] for s in series]):
        n = len(readings)
        mean, cov = np.zeros(n + m), np.zeros((n + m, n + m))
        for i, (s, rate) in enumerate(zip(series, choice)):
            own = [k for k, (j, _) in enumerate(readings) if j == i]
            times = np.array([readings[k][1]["week"] for k in own] + WEEKS)
            mu, k = curve_moments(s["curve"], rate["weeks"], times, log)
            sign = np.array([1.0] * len(own) + [s["sign"]] * m)
            place = own + list(range(n, n + m))
            mean[place] += sign * mu
            cov[np.ix_(place, place)] += np.outer(sign, sign) * k
        v = cov[:n, :n].copy()
        for a, (i, r) in enumerate(readings):
            v[a, a] += r["error"] ** 2
            for b, (j, q) in enumerate(readings):
                if i != j and r["week"] == q["week"]:
                    v[a, b] += case["error_correlation"] * r["error"] * q["error"]
        weight = np.log(np.prod([rate["weight"] for rate in choice]))
        if n:
            r = y - mean[:n]
            gain = np.linalg.solve(v, cov[:n, n:]).T
            post = mean[n:] + gain @ r
            var = np.diag(cov[n:, n:] - gain @ cov[:n, n:])
            weight += -0.5 * r @ np.linalg.solve(v, r) - 0.5 * np.linalg.slogdet(v)[1]
        else:
            post, var = mean, np.diag(cov)
        parts.append((weight, post, np.sqrt(var)))
    weights = np.exp(np.array([p[0] for p in parts]) - max(p[0] for p in parts))
    weights /= weights.sum()
    means, sds = np.array([p[1] for p in parts]), np.array([p[2] for p in parts])
    e = [s["sign"] * s["error"] for s in series]
    error = np.sqrt(sum(a * b * (1 if i == j else case["error_correlation"]) for i, a in enumerate(e) for j, b in enumerate(e)))
    target = np.log(case["target"]) if log else case["target"]
    return {"weights": weights.tolist(), "error": float(error), "weeks": [week(weights, means[:, w], sds[:, w], error, target, t) for w, t in enumerate(WEEKS)]}


def week(weights, means, sds, error, target, t):
    mean = weights @ means
    quantile = lambda p, s: brentq(lambda x: weights @ norm.cdf((x - means) / s) - p, (means - 12 * s).min(), (means + 12 * s).max(), xtol=1e-13, rtol=1e-14)
    seen = np.sqrt(sds ** 2 + error ** 2)
    return {
        "week": t, "mean": float(mean), "sd": float(np.sqrt(weights @ (sds ** 2 + (means - mean) ** 2))),
        "quantiles": [quantile(p, sds) for p in (0.05, 0.1, 0.5, 0.9, 0.95)], "seen": [quantile(p, seen) for p in (0.1, 0.9)],
        "at_least": float(weights @ norm.sf((target - means) / sds)), "shown_at_least": float(weights @ norm.sf((target - means) / seen)),
    }


def invent(rng, k):
    """Random models: one series or two, linear or logarithmic, with and without misfit, none to twelve readings."""
    log, two = k % 4 == 3, k % 5 == 4
    log = log and not two
    level = lambda: float(np.round(rng.uniform(20, 120), 2)) if log else float(np.round(rng.uniform(-5, 120), 2))
    unit = 0.02 if log else 1.0
    visits = np.sort(rng.choice(np.arange(2, 180), size=rng.integers(0, 13) if k else 0, replace=False)) / 7

    def one(sign):
        early = float(np.round(rng.uniform(0.5, 5), 2))
        curve = {
            "early": {"week": early, "value": level(), "sd": float(np.round(unit * rng.uniform(3, 25), 3))},
            "late": {"week": early + float(np.round(rng.uniform(3, 15), 2)), "value": level(), "sd": float(np.round(unit * rng.uniform(3, 25), 3))},
            "correlation": float(np.round(rng.uniform(-0.5, 0.95), 2)),
            "rates": [{"weeks": float(np.round(rng.uniform(1, 18), 2)), "weight": float(rng.integers(1, 5))} for _ in range(rng.integers(1, 6))],
            "misfit_sd": 0.0 if k % 3 == 0 else float(np.round(unit * rng.uniform(0.5, 6), 3)),
            "misfit_weeks": float(np.round(rng.uniform(1, 10), 1)),
        }
        error = float(np.round(unit * rng.uniform(1, 8), 3))
        seen = [t for t in visits if rng.random() < 0.9]
        readings = [{"week": float(t), "value": float(np.round(abs(level()) + 1, 1)), "error": error * (1.0 if k % 2 else float(rng.uniform(0.5, 2)))} for t in seen]
        return {"sign": sign, "error": error, "curve": curve, "readings": readings}

    return {
        "scale": "logarithmic" if log else "linear", "error_correlation": float(rng.choice([0.0, 0.5, -0.3])) if two else 0.0,
        "series": [one(1.0), one(-1.0)] if two else [one(1.0)], "target": float(np.round(rng.uniform(20, 120), 1)),
    }


if __name__ == "__main__":
    rng = np.random.default_rng(4)
    cases = [invent(rng, k) for k in range(240)]
    print(json.dumps({
        "made_with": f"python {platform.python_version()}, numpy {np.__version__}, scipy {scipy.__version__}",
        "cases": [{**case, "expected": reckon(case)} for case in cases],
    }, separators=(",", ":")).replace('{"scale"', '\n{"scale"'))
