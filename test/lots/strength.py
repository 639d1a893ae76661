"""Tinting strength and residual difference of an invented lot, worked out without the project's code.

    python3 test/lots/strength.py

Reads the CIE tables as numbers out of lib/colorimetry and nothing else of the project; sums at 10 nm,
takes Saunderson's surface off (d/8, specular excluded), and writes CIEDE2000 out in full after Sharma,
Wu & Dalal (2005). What it prints stands in lot-strength.test.ts.
"""
import math
import re
from pathlib import Path

LIB = Path(__file__).resolve().parents[2] / "lib" / "colorimetry"


def rows(name):
    text = (LIB / name).read_text(encoding="utf8")
    found = re.findall(r"^\s*\[(\d{3}(?:, [-\d.e]+)+)\],?$", text, re.M)
    return {int(row.split(",")[0]): [float(x) for x in row.split(",")[1:]] for row in found}


OBSERVERS = rows("standard-observers.ts")
ILLUMINANTS = rows("standard-illuminants.ts")
D65 = 3  # columns: A, C, D50, D65
NM = list(range(400, 701, 10))
K1, K2 = 0.04, 0.6

standard = [0.12 + 0.45 / (1 + math.exp((560 - nm) / 25)) for nm in NM]
lot = [0.11 + 0.46 / (1 + math.exp((557 - nm) / 24)) for nm in NM]
white = [0.88 for _ in NM]


def internal(measured):
    gain = (1 - K1) * (1 - K2)
    return measured / (gain + K2 * measured)


def external(reflectance):
    return (1 - K1) * (1 - K2) * reflectance / (1 - K2 * reflectance)


def theta(measured):
    r = internal(measured)
    return (1 - r) ** 2 / (2 * r)


def back(ratio):
    return external(1 + ratio - math.sqrt(ratio * ratio + 2 * ratio))


def weights():
    out = []
    for nm in NM:
        power = ILLUMINANTS[nm][D65]
        out.append([power * OBSERVERS[nm][3 + i] for i in range(3)])
    return out


W = weights()
TAILS = [nm for nm in OBSERVERS if nm < 400 or (700 < nm <= 780 and nm in ILLUMINANTS)]


def lab(reflectances):
    xyz, whole = [0, 0, 0], [0, 0, 0]
    for i in range(3):
        for r, w in zip(reflectances, W):
            xyz[i] += r * w[i]
            whole[i] += w[i]
        for nm in TAILS:  # beyond its ends a reading goes on as it ends
            w = ILLUMINANTS[nm][D65] * OBSERVERS[nm][3 + i]
            xyz[i] += (reflectances[0] if nm < 400 else reflectances[-1]) * w
            whole[i] += w
    f = [t ** (1 / 3) if t > (6 / 29) ** 3 else 841 / 108 * t + 4 / 29 for t in (a / b for a, b in zip(xyz, whole))]
    return 116 * f[1] - 16, 500 * (f[0] - f[1]), 200 * (f[1] - f[2])


def ciede2000(one, two):
    (l1, a1, b1), (l2, a2, b2) = one, two
    c = (math.hypot(a1, b1) + math.hypot(a2, b2)) / 2
    g = 0.5 * (1 - math.sqrt(c**7 / (c**7 + 25**7)))
    a1, a2 = (1 + g) * a1, (1 + g) * a2
    c1, c2 = math.hypot(a1, b1), math.hypot(a2, b2)
    h1, h2 = (math.degrees(math.atan2(b, a)) % 360 for a, b in ((a1, b1), (a2, b2)))
    dl, dc = l2 - l1, c2 - c1
    dh = h2 - h1
    dh = dh - 360 if dh > 180 else dh + 360 if dh < -180 else dh
    dbig = 2 * math.sqrt(c1 * c2) * math.sin(math.radians(dh / 2))
    lm, cm = (l1 + l2) / 2, (c1 + c2) / 2
    hm = (h1 + h2) / 2 if abs(h1 - h2) <= 180 else ((h1 + h2 + 360) / 2) % 360
    t = (
        1
        - 0.17 * math.cos(math.radians(hm - 30))
        + 0.24 * math.cos(math.radians(2 * hm))
        + 0.32 * math.cos(math.radians(3 * hm + 6))
        - 0.20 * math.cos(math.radians(4 * hm - 63))
    )
    turn = 30 * math.exp(-(((hm - 275) / 25) ** 2))
    rc = 2 * math.sqrt(cm**7 / (cm**7 + 25**7))
    sl = 1 + 0.015 * (lm - 50) ** 2 / math.sqrt(20 + (lm - 50) ** 2)
    sc, sh = 1 + 0.045 * cm, 1 + 0.015 * cm * t
    rt = -math.sin(math.radians(2 * turn)) * rc
    total = math.sqrt((dl / sl) ** 2 + (dc / sc) ** 2 + (dbig / sh) ** 2 + rt * dc / sc * dbig / sh)
    return total, dl, dc, dbig


own = theta(white[0])
of_standard = [theta(r) - own for r in standard]
of_lot = [theta(r) - own for r in lot]
strongest = of_standard.index(max(of_standard))
eye = [sum(w) for w in W]
# The tails of the eye's weights beyond the reading's ends count with its ends, as in the sums above.
eye[0] += sum(ILLUMINANTS[nm][D65] * sum(OBSERVERS[nm][3:]) for nm in TAILS if nm < 400)
eye[-1] += sum(ILLUMINANTS[nm][D65] * sum(OBSERVERS[nm][3:]) for nm in TAILS if nm > 700)
weighted = sum(w * x for w, x in zip(eye, of_lot)) / sum(w * x for w, x in zip(eye, of_standard))
residual = ciede2000(lab(standard), lab([back(x / weighted + own) for x in of_lot]))

print(f"strongest at {NM[strongest]} nm")
print(f"strength there {100 * of_lot[strongest] / of_standard[strongest]:.3f} %")
print(f"weighted {100 * weighted:.3f} %")
print("difference {:.4f}, dL' {:.4f}, dC' {:.4f}, dH' {:.4f}".format(*ciede2000(lab(standard), lab(lot))))
print("residual {:.4f}, dL' {:.4f}, dC' {:.4f}, dH' {:.4f}".format(*residual))
