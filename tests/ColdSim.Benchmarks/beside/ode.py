"""The rig of one-rig.toml by a general ODE suite (SciPy's LSODA with event functions), to compare its time and its result with ColdSim's.

    python3 tests/ColdSim.Benchmarks/beside/ode.py
    dotnet run -c Release --project tests/ColdSim.Benchmarks -- beside tests/ColdSim.Benchmarks/beside/one-rig.toml

Needs NumPy and SciPy. The equations are those of docs/model.md; nothing is shared with the program but the nodes of propane's saturation
line, which are read from its source, and the weather file.
"""

import csv
import math
import re
import time
from datetime import datetime
from pathlib import Path

import numpy as np
from scipy.integrate import solve_ivp
from scipy.interpolate import CubicHermiteSpline

HERE = Path(__file__).parent
SOURCE = HERE.parents[2] / "src/ColdSim.Physics/Fluids/SaturationNodes.cs"

# Propane and cylinder
HEATING_J_KG = 50.33e6
POUND_KG = 0.45359237
WATER_KG_M3 = 1000.0
VOLUME_M3 = 238.1 * POUND_KG / WATER_KG_M3
FILL_KG = 100.0 * POUND_KG
SHELL_J_K = 25.6 * 460
FIXED_W_K = 12.0

# Coach, furnace, thermostat, draw
ENVELOPE_W_K, GAINS_W = 70.0, 200.0
AIR_J_K, FURNISHINGS_J_K, COUPLING_W_K = 210e3, 1.2e6, 230.0
LEAK, STACK, WIND = 60 / 1000, 0.000145, 0.000246
INPUT_W, EFFICIENCY, DRAW_W = 3500.0, 0.8, 250.0
SET_K, HALF_BAND_K, LAG_S = 288.15, 0.5, 180.0
NIGHTS, SEA_PA, DRY_J_KGK = 14, 101_325.0, 287.05


def saturation():
    """Splines of both volumes, both energies and their slopes by temperature."""
    text = SOURCE.read_text()
    text = text[text.index("Propane =>"):]
    rows = re.findall(r"^\s+(-?\d[^\n]*),$", text[: text.index("];")], re.M)
    nodes = np.array([[float(x) for x in row.split(",")] for row in rows])
    t_k = 191.0 + np.arange(len(nodes))
    return [CubicHermiteSpline(t_k, nodes[:, i], nodes[:, 4 + i]) for i in range(4)], CubicHermiteSpline(t_k, nodes[:, 8], nodes[:, 9])


def weather():
    rows = [r for r in csv.reader(line for line in open(HERE / "swing.csv") if not line.startswith("#"))][1:]
    times = [datetime.fromisoformat(r[0]) for r in rows]
    start = datetime.fromisoformat("2027-01-10T16:00-07:00")
    s = np.array([(t - start).total_seconds() for t in times])
    return s, np.array([float(r[1]) + 273.15 for r in rows]), np.array([float(r[2]) for r in rows]), np.array([float(r[3]) for r in rows])


def main():
    (v_l, v_v, u_l, u_v), p_sat = saturation()
    slopes = [f.derivative() for f in (v_l, v_v, u_l, u_v)]
    hours_s, air_k, wind_m_s, dew_c = weather()
    vapour_pa = 610.94 * np.exp(17.625 * dew_c / (243.04 + dew_c))
    draw_kg_s, furnace_kg_s = DRAW_W / HEATING_J_KG, INPUT_W / HEATING_J_KG

    def rates(t, y, lit):
        mass, t_k, air, furnishings, sensor = y
        out_k, wind, vapour = np.interp(t, hours_s, air_k), np.interp(t, hours_s, wind_m_s), np.interp(t, hours_s, vapour_pa)
        vl, vv, ul, uv = float(v_l(t_k)), float(v_v(t_k)), float(u_l(t_k)), float(u_v(t_k))
        dvl, dvv, dul, duv = (float(f(t_k)) for f in slopes)
        per_gap = 1 / (vv - vl)
        vapour_kg = (VOLUME_M3 - mass * vl) * per_gap
        liquid_kg = mass - vapour_kg
        boiled = -(liquid_kg * dvl + vapour_kg * dvv) * per_gap
        capacity = liquid_kg * dul + vapour_kg * duv + (uv - ul) * boiled + SHELL_J_K
        latent = uv - ul + float(p_sat(t_k)) * (vv - vl)
        flow = draw_kg_s + (furnace_kg_s if lit else 0)
        warming = (FIXED_W_K * (out_k - t_k) - flow * latent * vv * per_gap) / capacity
        dt = air - out_k
        density = (SEA_PA - (1 - 0.621945) * vapour) / (DRY_J_KGK * out_k)
        loss = (ENVELOPE_W_K + density * 1006 * LEAK * math.sqrt(STACK * abs(dt) + WIND * wind * wind)) * dt
        heat = furnace_kg_s * HEATING_J_KG * EFFICIENCY if lit else 0
        over = COUPLING_W_K * (air - furnishings)
        return [-flow, warming, (heat + GAINS_W - loss - over) / AIR_J_K, over / FURNISHINGS_J_K, (air - sensor) / LAG_S]

    def cold(t, y, *_):
        return y[4] - (SET_K - HALF_BAND_K)

    def warm(t, y, *_):
        return y[4] - (SET_K + HALF_BAND_K)

    cold.terminal = warm.terminal = True
    cold.direction, warm.direction = -1, 1

    begun = time.perf_counter()
    y = np.array([FILL_KG, float(np.interp(0, hours_s, air_k)), SET_K, SET_K, SET_K])
    t, end, calls, starts, evaluations = 0.0, NIGHTS * 86_400.0, False, 0, 0

    def go(until, lit, event):
        nonlocal t, y, evaluations
        r = solve_ivp(rates, (t, until), y, "LSODA", args=(lit,), events=event, rtol=1e-6, atol=1e-6, max_step=900)
        t, y, evaluations = r.t[-1], r.y[:, -1], evaluations + r.nfev
        return r.status == 1

    while t < end:
        if not calls:
            calls = go(end, False, cold)
            starts += calls
        else:
            calls = not go(end, True, warm)
    seconds = time.perf_counter() - begun
    print(f"burner starts {starts}, {1e3 * seconds:.0f} ms, {evaluations} evaluations, left {y[0]:.6f} kg, liquid {y[1]:.4f} K, inside {y[2]:.3f} K")


main()
