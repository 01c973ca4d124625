"""Recomputes src/test/resources/oracles/weight_dynamics.csv: random bodies, where an intake leads them, and the intake that leads to
a weight. Written from the equations of Hall et al., Lancet 2011;378:826-837 (web appendix), apart from the program and in kcal instead
of kJ; another integrator (LSODA) and EE found as a fixed point of its implicit form. Needs Python 3 with numpy and scipy:

    python3 src/test/oracles/weight_dynamics.py > src/test/resources/oracles/weight_dynamics.csv
"""
import random

from scipy.integrate import odeint
from scipy.optimize import brentq

KJ = 4.184
RHO_F, RHO_L, RHO_G = 39500 / KJ, 7600 / KJ, 17600 / KJ
GAMMA_F, GAMMA_L = 13 / KJ, 92 / KJ
ETA_F, ETA_L = 750 / KJ, 960 / KJ
FORBES = 10.4 * RHO_L / RHO_F


class Body:
    def __init__(self, kg, fat, total, pal):
        self.total, self.start = total, [fat, kg - fat - 1.85, 0.5, 0.0, 0.0]
        self.delta = max(0.0, (0.9 * pal - 1) * total / pal / kg)
        self.k = total - GAMMA_F * fat - GAMMA_L * self.start[1] - self.delta * kg

    @staticmethod
    def kg(state):
        return state[0] + state[1] + state[3] + 3.7 * state[2]

    def slope(self, state, day, intake):
        fat, lean, glycogen, fluid, adaptation = state
        carbs, carbs_before = intake / 2, self.total / 2
        d_glycogen = (carbs - carbs_before / 0.25 * glycogen ** 2) / RHO_G
        p = FORBES / (FORBES + fat)
        fixed = (self.k + GAMMA_F * fat + GAMMA_L * lean + self.delta * self.kg(state)
                 + 0.10 * (intake - self.total) + adaptation)
        burnt = fixed
        for _ in range(14):  # the cost of building depends on what is burnt, and the other way round
            left = intake - burnt - RHO_G * d_glycogen
            burnt = fixed + ETA_F * (1 - p) * left / RHO_F + ETA_L * p * left / RHO_L
        left = intake - burnt - RHO_G * d_glycogen
        return [(1 - p) * left / RHO_F, p * left / RHO_L, d_glycogen,
                (-3000 * fluid - 4000 * (1 - carbs / carbs_before)) / 3220,
                (0.14 * (intake - self.total) - adaptation) / 14]

    def after(self, days, intake):
        return odeint(self.slope, self.start, [0, days], args=(intake,), rtol=1e-10, atol=1e-10, mxstep=10000)[1]

    def intake_for(self, kg, days):
        return brentq(lambda kcal: self.kg(self.after(days, kcal)) - kg, 0.3 * self.total, 3 * self.total, xtol=1e-4)


def main():
    rng = random.Random(20111013)
    print("# Written by src/test/oracles/weight_dynamics.py, which says how.")
    print("kg,fat_kg,total_kcal,pal,change_kcal,days,kg_then,fat_kg_then,rate_kg_a_week,kcal_for_rate,reach_kg,reach_days,kcal_to_reach")
    for _ in range(100):
        kg = round(rng.uniform(48, 150), 1)
        fat = round(kg * rng.uniform(0.10, 0.5), 2)
        pal = round(rng.uniform(1.3, 2.2), 2)
        total = round((370 + 21.6 * (kg - fat)) * pal)
        change = round(rng.uniform(-0.3, 0.25) * total)
        days = rng.choice([7, 28, 84, 182, 364, 728])
        body = Body(kg, fat, total, pal)
        then = body.after(days, total + change)
        rate = round(rng.uniform(-0.01, 0.005) * kg, 3)
        reach_days = rng.randint(40, 728)
        far = min(0.12, 0.008 * reach_days / 7)
        reach = round(kg * (1 + rng.uniform(-far, far / 2)), 1)
        print(kg, fat, total, pal, change, days, "%.4f" % body.kg(then), "%.4f" % then[0], rate,
              "%.3f" % body.intake_for(kg + 4 * rate, 28), reach, reach_days,
              "%.3f" % body.intake_for(reach, reach_days), sep=",")


if __name__ == "__main__":
    main()
