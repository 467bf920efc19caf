"""Bills reckoned apart from the program, with exact fractions. python3 bills.py > bills.txt"""

import random
from fractions import Fraction as F
from math import floor


def rounded(x, digits, mode):
    """A fraction of 0 or more to so many decimals, as whole minor units."""
    scaled = x * 10**digits
    low = floor(scaled)
    rest = scaled - low
    if rest > F(1, 2) or (rest == F(1, 2) and (mode == "half-up" or low % 2 == 1)):
        return low + 1
    return low


def split(amount, weights):
    """Whole minor units in proportion, by largest remainders, of equal ones the earlier."""
    total = sum(weights)
    if total == 0:
        return [0 for _ in weights]
    exact = [amount * w / total for w in weights]
    parts = [floor(e) for e in exact]
    order = sorted(range(len(parts)), key=lambda i: (-(exact[i] - parts[i]), i))
    for i in order[: amount - sum(parts)]:
        parts[i] += 1
    return parts


def bill(lines, off_percent, inclusive, at, mode, digits):
    unit = 10**digits
    amounts = [rounded(q * p, digits, mode) for q, p, _ in lines]
    off = rounded(F(sum(amounts), unit) * off_percent / 100, digits, mode)
    charged = [a - o for a, o in zip(amounts, split(off, [F(a) for a in amounts]))]
    taxes = 0
    for name in sorted({t for _, _, ts in lines for t in ts}):
        exact, each = F(0), 0
        for c, (_, _, ts) in zip(charged, lines):
            if name in ts:
                base = 100 + sum(ts.values()) if inclusive else F(100)
                part = F(c, unit) * ts[name] / base
                exact += part
                each += rounded(part, digits, mode)
        taxes += each if at == "line" else rounded(exact, digits, mode)
    net = sum(charged) - taxes if inclusive else sum(charged)
    return off, net, net + taxes


random.seed(4217)
RATES = {"a": [F("7.25"), F(5), F("19"), F("0.5")], "b": [F(1), F("2.125"), F("9.975")]}
CURRENCIES = {"USD": 2, "JPY": 0, "KWD": 3, "EUR": 2, "CHF": 2}


def text(x, digits):
    sign = "-" if x < 0 else ""
    whole, part = divmod(abs(x), 10**digits)
    return sign + (f"{whole}.{part:0{digits}d}" if digits else str(whole))


print("# source: computed apart from the program with exact fractions, Python 3 fractions.Fraction")
print("# tool: python3 bills.py > bills.txt (beside this file; seed 4217)")
print("# currency inclusive at rounding discount-percent lines off net total; a line: quantity*price@taxes")
for n in range(160):
    currency = random.choice(list(CURRENCIES))
    digits = CURRENCIES[currency]
    inclusive = random.random() < 0.5
    at = random.choice(["line", "total"])
    mode = random.choice(["half-up", "half-even"])
    off = random.choice([F(0), F(0), F(5), F("12.5"), F(100), F("33.3333")])
    shared = {k: random.choice(v) for k, v in RATES.items()}
    lines = []
    for _ in range(random.randint(1, 6)):
        q = F(random.choice([1, 1, 3, random.randint(1, 5000)]), random.choice([1, 4, 1000]))
        p = F(random.choice([70, random.randint(0, 200000)]), 10**digits)
        keys = random.sample(["a", "b"], random.randint(0, 2))
        lines.append((q, p, {k: shared[k] for k in keys}))
    taken, net, total = bill(lines, off, inclusive, at, mode, digits)

    def plain(x):
        return f"{float(x):.10f}".rstrip("0").rstrip(".")

    words = ";".join(
        plain(q) + "*" + text(int(p * 10**digits), digits) + "@"
        + "+".join(f"{k}:{plain(v)}" for k, v in sorted(ts.items()))
        for q, p, ts in lines
    )
    print(currency, "yes" if inclusive else "no", at, mode, plain(off), words,
          text(taken, digits), text(net, digits), text(total, digits))
