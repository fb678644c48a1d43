"""Both reference networks by SciPy's integrators; prints method, tolerance, minute of the cutoff and microseconds a run.

Usage: networks.py two-batteries|main-and-essential
       networks.py two-batteries|main-and-essential exact
"""
import sys
from bisect import bisect_left
from math import exp, log, sqrt
from statistics import median
from time import process_time

import numpy
import scipy
from scipy.integrate import solve_ivp

# Charge, volts and charge, ohms; diode at 300.15 K.
EMF_A = ([0, .05, .10, .30, .60, .85, 1], [10.5, 11.3, 11.6, 12.0, 12.4, 12.7, 12.9])
EMF_B = ([0, .05, .10, .30, .60, .85, 1], [10.2, 11.0, 11.3, 11.75, 12.1, 12.4, 12.6])
OHMS_A = ([0, .20, 1], [30e-3, 18e-3, 12e-3])
OHMS_B = ([0, .20, 1], [90e-3, 55e-3, 40e-3])
SATURATION, SERIES = 20e-6, 6e-3
EMISSION = 1.05 * 1.380649e-23 * 300.15 / 1.602176634e-19

# Beyond the end of a battery constant power has no solution; NaN makes the integrator take a shorter step.
MOST_STEPS, UNSOLVED = 40, (numpy.nan, numpy.nan, numpy.nan)
LONGEST_STEP = 600.0


class Battery:
    """Tables and Peukert's law, with no bonus below the 20-hour current."""

    def __init__(self, ampere_hours, exponent, emf, ohms, series):
        self.knots = sorted(set(emf[0]) | set(ohms[0]))
        self.emf = [float(numpy.interp(z, *emf)) for z in self.knots]
        self.ohms = [float(numpy.interp(z, *ohms)) + series for z in self.knots]
        self.capacity = ampere_hours * 3600
        self.reference = ampere_hours / 20
        self.exponent = exponent - 1

    def at(self, z):
        """EMF and resistance."""
        x = self.knots
        i = min(max(bisect_left(x, z), 1), len(x) - 1)
        share = (z - x[i - 1]) / (x[i] - x[i - 1])
        return (self.emf[i - 1] + share * (self.emf[i] - self.emf[i - 1]),
                self.ohms[i - 1] + share * (self.ohms[i] - self.ohms[i - 1]))

    def rate(self, amperes):
        return -amperes / self.capacity * (max(amperes, self.reference) / self.reference) ** self.exponent


class TwoBatteries:
    cutoff = 10.4
    junction = start = .2

    def __init__(self):
        self.first = Battery(14, 1.18, EMF_A, OHMS_A, 8e-3 + SERIES)
        self.second = Battery(9, 1.20, EMF_B, OHMS_B, 12e-3 + SERIES)

    def solve(self, z):
        """Volts of the bus and both currents, by Newton in the volts across the second junction."""
        (e1, r1), (e2, r2) = self.first.at(z[0]), self.second.at(z[1])
        x = self.junction
        for k in range(MOST_STEPS):
            if k == MOST_STEPS // 2:
                x = self.start
            rise = SATURATION * exp(x / EMISSION)
            i2, slope2 = rise - SATURATION, rise / EMISSION
            v, slope_v = e2 - i2 * r2 - x, -slope2 * r2 - 1
            i1, slope1 = 3 + 50 / v + v / 24 - i2, (1 / 24 - 50 / v ** 2) * slope_v - slope2
            if i1 <= 0:
                x -= EMISSION
                continue
            miss = e1 - i1 * r1 - EMISSION * log(1 + i1 / SATURATION) - v
            step = min(max(miss / (slope1 * (r1 + EMISSION / (i1 + SATURATION)) + slope_v), -.5), max(EMISSION, .1 - x))
            x += step
            if abs(step) < 1e-7:
                self.junction = x
                return v + slope_v * step, i1 + slope1 * step, i2 + slope2 * step
        return UNSOLVED

    def rates(self, t, z):
        _, i1, i2 = self.solve(z)
        return self.first.rate(i1), self.second.rate(i2)

    def phases(self):
        """Rates and events, the last of which ends the phase; the last phase ends with the cutoff."""
        return [(self.rates, lambda t, z: self.solve(z)[0] - self.cutoff)]


class MainAndEssential:
    cutoff = 10.5
    junction = start = .3
    reserve = 7.0

    def __init__(self):
        self.main = Battery(20, 1.15, EMF_A, OHMS_A, 5e-3)
        self.backup = Battery(19, 1.20, EMF_B, OHMS_B, 12e-3 + SERIES)

    def solve(self, z):
        """Volts of the essential bus and both batteries' currents, by Newton in the volts across the first junction."""
        (e1, r1), (e2, r2) = self.main.at(z[0]), self.backup.at(z[1])
        x = self.junction
        square = 1 + r1 / 6
        for k in range(MOST_STEPS):
            if k == MOST_STEPS // 2:
                x = self.start
            rise = SATURATION * exp(x / EMISSION)
            normal, slope_normal = rise - SATURATION, rise / EMISSION
            half = e1 - r1 * (4 + normal)
            if half * half < 280 * r1 * square:
                x -= EMISSION
                continue
            root = sqrt(half * half - 280 * r1 * square)
            v1 = (half + root) / (2 * square)
            slope_v1 = -r1 * slope_normal * v1 / root
            v, slope_v = v1 - normal * (6e-3 + SERIES) - x, slope_v1 - slope_normal * (6e-3 + SERIES) - 1
            i2, slope2 = 1.5 + 50 / v + v / 30 - normal, (1 / 30 - 50 / v ** 2) * slope_v - slope_normal
            if i2 <= 0:
                x -= EMISSION
                continue
            miss = e2 - i2 * r2 - EMISSION * log(1 + i2 / SATURATION) - v
            step = min(max(miss / (slope2 * (r2 + EMISSION / (i2 + SATURATION)) + slope_v), -.5), max(EMISSION, .1 - x))
            x += step
            if abs(step) < 1e-7:
                self.junction = x
                return v + slope_v * step, (e1 - v1 - slope_v1 * step) / r1, i2 + slope2 * step
        return UNSOLVED

    def solve_backup(self, z):
        """The same once the main battery is exhausted, by Newton in the backup battery's current."""
        e2, r2 = self.backup.at(z[1])
        i = self.reserve
        for _ in range(MOST_STEPS):
            if i <= 0:
                break
            v = e2 - i * r2 - EMISSION * log(1 + i / SATURATION)
            slope_v = -r2 - EMISSION / (i + SATURATION)
            step = (1.5 + 50 / v + v / 30 - i) / (1 - (1 / 30 - 50 / v ** 2) * slope_v)
            i += step
            if abs(step) < 1e-7:
                self.reserve = i
                return v + slope_v * step, 0.0, i
        return UNSOLVED

    def rates(self, t, z):
        _, i1, i2 = self.solve(z)
        return self.main.rate(i1), self.backup.rate(i2)

    def rates_backup(self, t, z):
        return 0.0, self.backup.rate(self.solve_backup(z)[2])

    def phases(self):
        return [(self.rates, lambda t, z: z[0]),
                (self.rates_backup, lambda t, z: self.solve_backup(z)[0] - self.cutoff)]


def minutes(network, method, rtol, longest=LONGEST_STEP):
    t, z = 0.0, [1.0, 1.0]
    for rates, end in network.phases():
        end.terminal, end.direction = True, -1
        run = solve_ivp(rates, (t, 4 * 3600), z, method=method, rtol=rtol, atol=rtol, events=end, max_step=longest)
        t, z = run.t_events[0][0], run.y_events[0][0]
    return t / 60


def microseconds(run):
    run()
    times = []
    spent = 0.0
    while spent < 0.2 or len(times) < 3:
        start = process_time()
        run()
        times.append(process_time() - start)
        spent += times[-1]
    return median(times) * 1e6


def main(name, *rest):
    kind = {"two-batteries": TwoBatteries, "main-and-essential": MainAndEssential}[name]
    if rest:
        print(f"{minutes(kind(), 'DOP853', 2.3e-14, 5.0):.8f}")
        return
    print("version", scipy.__version__)
    for method in "RK45", "DOP853", "LSODA":
        for rtol in 1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8:
            network = kind()
            minute = minutes(network, method, rtol)
            print(method, f"{rtol:.0e}", f"{minute:.8f}", f"{microseconds(lambda: minutes(network, method, rtol)):.1f}")


main(*sys.argv[1:])
