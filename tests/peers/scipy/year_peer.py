"""The year's equations written a second time, from docs/science/year.md, and solved by SciPy's LSODA at tight tolerance.

usage: /usr/bin/python3 year_peer.py INPUT.json OUTPUT.json
INPUT is the run's input as the tests write it; OUTPUT gets the curves at the end of each hour and the totals.
Needs SciPy: apt-get install -y python3-scipy
"""
import json
import math
import sys
import time

from scipy.integrate import odeint

TT, TB, OT, OB, TAN, NO2, NO3, ALK, CO2, X1, X2, SOL, SOLN, VT, UP, LOST, HEAT, EVAP, TRANSP = range(19)
N = 19


def saturation(t, kpa):
    k, p = t + 273.15, kpa / 101.325
    ln_c = -139.34411 + 1.575701e5 / k - 6.642308e7 / k**2 + 1.2438e10 / k**3 - 8.621949e11 / k**4
    w = math.exp(11.8571 - 3840.7 / k - 216961 / k**2)
    th = 0.000975 - 1.426e-5 * t + 6.436e-8 * t * t
    return math.exp(ln_c) * p * (1 - w / p) * (1 - th * p) / ((1 - w) * (1 - th))


def vapour(t):
    k = t + 273.15
    if t < 0:
        ln_p = (-5.6745359e3 / k + 6.3925247 - 9.677843e-3 * k + 6.2215701e-7 * k**2 + 2.0747825e-9 * k**3
                - 9.484024e-13 * k**4 + 4.1635019 * math.log(k))
    else:
        ln_p = (-5.8002206e3 / k + 1.3914993 - 4.8640239e-2 * k + 4.1764768e-5 * k**2 - 1.4452093e-8 * k**3
                + 6.5459673 * math.log(k))
    return math.exp(ln_p) / 1000


def k_acid(t):
    k = t + 273.15
    return 10 ** -(356.3094 + 0.06091964 * k - 21834.37 / k - 126.8339 * math.log10(k) + 1684915 / k**2)


def air_dioxide(t, ppm, kpa):
    k = t + 273.15
    return 10 ** (108.3865 + 0.01985076 * k - 6919.53 / k - 40.45154 * math.log10(k) + 669365 / k**2) \
        * ppm * 1e-6 * 44009.5 * kpa / 101.325


def yan_hunt(t, lo, best, hi):
    if t <= lo or t >= hi:
        return 0.0
    return (hi - t) / (hi - best) * ((t - lo) / (best - lo)) ** ((best - lo) / (hi - best))


class Loop:
    def __init__(self, d):
        self.d, self.b, self.care = d, d["Loop"], d["Care"]
        self.fish, self.stands, self.places = d["Fish"], d["Stands"], d["Places"]
        self.nf, self.ns = len(self.fish), len(self.stands)
        self.number = [0.0] * self.nf
        self.ration = [0.0] * self.nf
        self.digest = [0.1] * self.nf
        self.rest = [0.0] * self.nf
        self.arrived = [False] * self.nf
        self.planted = [None] * self.ns
        self.bears = [False] * self.ns
        self.feed = self.picked = self.harvested = self.base = self.topped = 0.0
        a = self.b["FilterArea"]
        self.m1 = a * 1.0 * 0.147 / 0.77
        self.m2 = a * 1.5 * 0.042 / 1.08
        t = max(d["Air"][d["StartHour"]], self.b["Keep"] if self.b["HeaterWatts"] > 0 else -50)
        t = min(max(t, 1), 38)
        v = self.b["TankWater"] + self.b["BedWater"]
        y = [0.0] * (N + 2 * self.nf + 2 * self.ns)
        y[TT] = y[TB] = t
        y[VT] = self.b["TankWater"]
        y[OT] = saturation(t, self.b["Pressure"]) * self.b["TankWater"]
        y[OB] = saturation(t, self.b["Pressure"]) * self.b["BedWater"]
        y[NO3] = self.b["NitrateAtStart"] * v
        y[ALK] = self.b["SourceAlkalinity"] * v
        y[CO2] = y[ALK] * 44.0095 / 50.043 + 3 * air_dioxide(t, self.b["CarbonDioxide"], self.b["Pressure"]) * v
        y[X1] = self.b["BacteriaAtStart"] * self.m1
        y[X2] = self.b["BacteriaAtStart"] * self.m2
        self.y = y

    # Places of the batches in the state.
    def gut(self, i):
        return N + 2 * i

    def weight(self, i):
        return N + 2 * i + 1

    def mass(self, i):
        return N + 2 * self.nf + 2 * i

    def acid(self, y):
        v = (y[VT] + self.b["BedWater"]) * 1000
        a, c, k = y[ALK] / v / 50.043, max(y[CO2], 0) / v / 44.0095, k_acid(y[TT])
        free = k * max(c - a, 1e-9 * c + 1e-12)
        h = 2 * free / (a + k + math.sqrt((a + k) ** 2 + 4 * free))
        return h, c * h / (h + k) * 44009.5

    def rates(self, y, _t):
        b, f = self.b, [0.0] * len(y)
        vt, vb = y[VT], b["BedWater"]
        v, q = vt + vb, b["PumpFlow"]
        t = min(max(y[TT], 0), 40)
        tb = min(max(y[TB], 0), 40)

        # Living things.
        excreted = solids = solids_n = demand = 0.0
        for i, s in enumerate(self.fish):
            if self.number[i] <= 0:
                continue
            eaten = self.ration[i] * self.share
            used = self.digest[i] * y[self.gut(i)]
            f[self.gut(i)] = eaten - used
            n = used * s["Protein"] * 0.16
            gain = min(used / s["FeedConversion"], 0.9 * n / 0.026)
            f[self.weight(i)] = gain / self.number[i]
            waste = n - gain * 0.026
            excreted += 0.8 * waste
            solids_n += 0.2 * waste
            solids += 0.25 * used
            demand += 0.2 * used + self.rest[i] * 1.0718 ** (y[TT] - 20)
        no3 = max(0, y[NO3]) / v
        supply = no3 / (0.5 + no3) if q > 0 else 0.0
        uptake = water = warming = 0.0
        for p in self.places:
            warming += p["WarmingShare"] * p["Area"] * p["Light"][self.hour] * p["EnergyEachMole"] * 1e6 / 3600
        for i, s in enumerate(self.stands):
            if self.planted[i] is None:
                continue
            p = self.places[s["Place"]]
            light = p["Light"][self.hour]
            leaf = s["LeafArea"] * y[self.mass(i)]
            closed = 1 - math.exp(-0.7 * leaf)
            flux = light * 1e6 / 3600
            made = 0.75 / (1 + flux / 1000) * light * closed * yan_hunt(self.air, s["Least"], s["Best"], s["Most"]) * supply
            fruit = s["FruitShare"] * made if self.bears[i] else 0
            f[self.mass(i)], f[self.mass(i) + 1] = made - fruit, fruit
            uptake += made * s["Area"] * s["Nitrogen"]
            watts = 0.6 * closed * light * p["EnergyEachMole"] * 1e6 / 3600 + 10 * min(leaf, 3) * self.deficit
            water += watts * 3.6 / 2454 * s["Area"]

        # Heat.
        over = max(0, vapour(t) - self.damp)
        over_b = max(0, vapour(tb) - self.damp)
        ev = b["EvaporationHeat"] * (b["TankOpen"] * over + b["BedOpen"] * over_b)
        heater = b["HeaterWatts"] * min(max((b["Keep"] - y[TT]) / b["HeaterBand"] + 0.5, 0), 1)
        f[TT] = (b["TankConductance"] * (self.air - y[TT]) - b["EvaporationHeat"] * b["TankOpen"] * over + heater
                 + b["PumpHeat"] + 1163 * q * (y[TB] - y[TT])) / (1163 * vt)
        f[TB] = (b["BedConductance"] * (self.air - y[TB]) - b["EvaporationHeat"] * b["BedOpen"] * over_b + warming
                 + 1163 * q * (y[TT] - y[TB])) / (1163 * (vb + b["BedHeatStore"]))
        f[HEAT] = heater
        f[EVAP] = ev * 3.6 / (2501 - 2.361 * y[TT])
        f[TRANSP] = water
        f[VT] = -(f[EVAP] + water) / 1000

        # Water and bacteria.
        h, dioxide = self.acid(y)
        ct, cb = max(0, y[OT]) / vt, max(0, y[OB]) / vb
        kt = b["TankSurface"] + b["Bubbles"] + b["Falls"]
        kb = b["BedExchange"]
        breath = demand * ct / (0.3 + ct)
        decay = 0.05 / 24 * 1.06 ** (tb - 20)
        broken, mineral = decay * y[SOL], decay * y[SOLN]
        aerobic = cb / (0.2 + cb)
        solids_o2 = 1.2 * 0.7 * broken * aerobic
        lost = 1.2 / 2.86 * broken * (0.3 + 0.7 * (1 - aerobic)) * no3 / (0.5 + no3)
        tan, no2, alk = max(0, y[TAN]) / v, max(0, y[NO2]) / v, max(0, y[ALK]) / v
        ph = 1 / (1 + h / 1e-6 + 10 ** -9.5 / h)
        ka = 10 ** -(0.09018 + 2729.92 / (t + 273.15))
        k1 = (0.77 / 24 * math.exp(0.098 * (min(tb, 36) - 20)) / 0.147 * y[X1] * ph * tan / (0.7 + tan)
              * cb / (0.3 + cb) * alk / (25 + alk))
        k2 = (1.08 / 24 * math.exp(0.0587 * (min(tb, 36) - 20)) / 0.042 * y[X2] * ph * no2 / (1.0 + no2)
              * cb / (1.1 + cb) / (1 + tan * ka / (ka + h) / 1.0))
        r1 = k1 * q * tan / (k1 + q * tan) if k1 > 0 else 0.0
        r2 = k2 * q * no2 / (k2 + q * no2) if k2 > 0 else 0.0
        f[OT] = kt * (saturation(t, b["Pressure"]) - ct) + q * (cb - ct) - breath
        f[OB] = kb * (saturation(tb, b["Pressure"]) - cb) + q * (ct - cb) - 3.135 * r1 - 1.045 * r2 - solids_o2
        f[TAN] = excreted + mineral - r1
        f[NO2] = r1 - r2
        f[NO3] = r2 - uptake - lost
        f[ALK] = 3.573 * (excreted + mineral + lost + 0.5 * uptake) - 7.05 * r1
        strip = 0.4 * b["Bubbles"] + 0.9 * (kt - b["Bubbles"] + kb)
        f[CO2] = 1.375 * (breath + solids_o2 + 2.86 * lost) - strip * (
            dioxide - air_dioxide(t, b["CarbonDioxide"], b["Pressure"]))
        f[X1] = 0.147 * r1 * (1 - y[X1] / self.m1) - 0.05 / 24 * y[X1]
        f[X2] = 0.042 * r2 * (1 - y[X2] / self.m2) - 0.05 / 24 * y[X2]
        stays = (1 - b["SolidsCaught"]) * 0.6
        f[SOL], f[SOLN] = stays * solids - broken, stays * solids_n - mineral
        f[UP], f[LOST] = uptake, lost
        return f

    def visit(self, hour):
        y, b, c = self.y, self.b, self.care
        # Water.
        v = y[VT] + b["BedWater"]
        drawn = min(c["Exchange"] * v, 0.9 * y[VT])
        for i in (TAN, NO2, NO3, ALK, CO2):
            y[i] *= 1 - drawn / v
        y[OT] *= 1 - drawn / y[VT]
        y[VT] -= drawn
        added = b["TankWater"] - y[VT]
        if c["TopsUp"] and added > 0:
            y[TT] = (y[TT] * y[VT] + b["SourceTemperature"] * added) / b["TankWater"]
            y[OT] += added * saturation(b["SourceTemperature"], b["Pressure"])
            y[ALK] += added * b["SourceAlkalinity"]
            y[CO2] += added * (b["SourceAlkalinity"] * 44.0095 / 50.043 + 5)
            y[VT] = b["TankWater"]
            self.topped += added * 1000
        # Fish.
        oxygen = y[OT] / y[VT]
        for i, s in enumerate(self.fish):
            g, w = self.gut(i), self.weight(i)
            if not self.arrived[i] and hour >= s["InAfter"]:
                self.arrived[i] = True
                self.number[i], y[w], y[g] = s["Number"], s["Weight"], 0.0
            if self.number[i] <= 0:
                continue
            if hour > s["InAfter"]:
                self.number[i] *= 1 - s["Mortality"]
            if y[w] >= s["HarvestAt"]:
                self.harvested += self.number[i] * y[w] / 1000
                self.number[i] = self.ration[i] = self.rest[i] = y[g] = 0.0
                continue
            up = s["Growth"] / 100 * s["Best"] * yan_hunt(y[TT], s["Least"], s["Best"], s["Most"])
            gain = (y[w] ** (1 / 3) + up) ** 3 - y[w]
            appetite = min(max(2 * oxygen / s["Oxygen"] - 1, 0), 1)
            self.ration[i] = min(gain * s["FeedConversion"], s["MostRation"] * y[w]) * appetite * self.number[i]
            self.digest[i] = 0.2 * 1.0718 ** (min(max(y[TT], 0), 40) - s["Best"])
            self.rest[i] = self.number[i] * y[w] / 1000 * 0.15 * (y[w] / 100) ** -0.2 * 1.0718 ** (20 - s["Best"])
        # Crops.
        for i, s in enumerate(self.stands):
            m = self.mass(i)
            if self.planted[i] is None:
                if hour >= s["InAfter"]:
                    self.plant(i, hour)
                continue
            age = (hour - self.planted[i]) / 24
            over = age >= s["Stays"]
            if s["Picking"] == 0 and (over or y[m] >= s["PickedAt"]):
                self.pick(s, y[m])
                self.plant(i, hour)
            elif s["Picking"] == 1 and (over or y[m] >= s["PickedAt"]):
                left = 0 if over else 3 * s["PlantedAs"]
                self.pick(s, y[m] - left)
                y[m] = left
                if over:
                    self.plant(i, hour)
            elif s["Picking"] == 2:
                self.bears[i] = self.bears[i] or y[m] >= s["PickedAt"]
                if y[m + 1] > 0 and (over or int(age) % 7 == 0):
                    self.pick(s, y[m + 1])
                    y[m + 1] = 0.0
                if over:
                    self.plant(i, hour)
        # Base.
        v = y[VT] + b["BedWater"]
        alk = y[ALK] / v
        if c["Base"] and alk < c["AlkalinityLow"]:
            rise = min(c["AlkalinityAim"] - alk, c["MostRise"]) * v
            y[ALK] += rise
            carbon = {"NaHCO3": 1, "KHCO3": 1, "CaCO3": 0.5}.get(c["Base"]["Symbol"], 0)
            y[CO2] += rise * 44.0095 / 50.043 * carbon
            self.base += rise / 50.043 * c["Base"]["EquivalentWeight"]

    def plant(self, i, hour):
        self.y[self.mass(i)], self.y[self.mass(i) + 1] = self.stands[i]["PlantedAs"], 0.0
        self.planted[i], self.bears[i] = hour, False

    def pick(self, stand, dry):
        self.picked += dry * stand["Area"] / stand["DryMatter"] / 1000

    def run(self):
        d, out = self.d, {k: [] for k in ("TankTemperature", "BedTemperature", "Oxygen", "BedOxygen", "Ammonia", "Nitrite",
                                         "Nitrate", "Alkalinity", "PH", "Solids", "Water", "FishMass", "CropMass")}
        meals = self.care["Meals"]
        for hour in range(d["Hours"]):
            self.hour = (d["StartHour"] + hour) % 8760
            if hour == 0 or self.hour % 24 == self.care["VisitHour"]:
                self.visit(hour)
            self.air = d["Air"][self.hour]
            most = vapour(self.air)
            self.damp = most * d["Humidity"][self.hour] / 100
            self.deficit = most - self.damp
            self.share = meals.count(self.hour % 24) / len(meals) if meals else 0.0
            self.feed += sum(r for r, n in zip(self.ration, self.number) if n > 0) * self.share / 1000
            y = self.y = list(odeint(self.rates, self.y, [0.0, 1.0], rtol=1e-7, atol=1e-8, mxstep=20000)[1])
            v = y[VT] + self.b["BedWater"]
            for k, x in (("TankTemperature", y[TT]), ("BedTemperature", y[TB]), ("Oxygen", y[OT] / y[VT]),
                         ("BedOxygen", y[OB] / self.b["BedWater"]), ("Ammonia", y[TAN] / v), ("Nitrite", y[NO2] / v),
                         ("Nitrate", y[NO3] / v), ("Alkalinity", y[ALK] / v), ("PH", -math.log10(self.acid(y)[0])),
                         ("Solids", y[SOL]), ("Water", v * 1000),
                         ("FishMass", sum(n * y[self.weight(i)] for i, n in enumerate(self.number)) / 1000),
                         ("CropMass", sum((y[self.mass(i)] + y[self.mass(i) + 1]) * s["Area"]
                                          for i, s in enumerate(self.stands)))):
                out[k].append(x)
        y = self.y
        totals = {"Feed": self.feed, "CropPicked": self.picked, "FishHarvested": self.harvested, "Base": self.base,
                  "ToppedUp": self.topped, "Heat": y[HEAT] / 1000, "Evaporated": y[EVAP], "Transpired": y[TRANSP],
                  "TakenUp": y[UP], "Lost": y[LOST]}
        return {"curves": out, "totals": totals}


def numbers(x):
    """Named numbers such as "Infinity" come as text."""
    if isinstance(x, dict):
        return {k: numbers(v) for k, v in x.items()}
    if isinstance(x, list):
        return x if x and isinstance(x[0], float) else [numbers(v) for v in x]
    return float(x) if x in ("Infinity", "-Infinity", "NaN") else x


if __name__ == "__main__":
    with open(sys.argv[1], encoding="utf-8") as source:
        loop = Loop(numbers(json.load(source)))
    began = time.process_time()
    result = loop.run()
    result["seconds"] = time.process_time() - began
    with open(sys.argv[2], "w", encoding="utf-8") as target:
        json.dump(result, target)
