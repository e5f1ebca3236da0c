// What a step costs at the least: a fourth-order Runge-Kutta step of ten states, each stage reading a table of five columns by cubic Hermite
// polynomials, as the step loop does for propane. No events, no films, no records.
//
//     g++ -O3 -march=native -o floor tests/ColdSim.Benchmarks/beside/floor.cpp && ./floor
//
// Prints nanoseconds a step: one rig at a time, and eight rigs side by side in the lanes of a vector.
#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <vector>

constexpr int States = 10, Columns = 5, Nodes = 164;
static double table_[Nodes * 2 * Columns];

using Eight = double __attribute__((vector_size(64)));
using Places = long long __attribute__((vector_size(64)));

template <class T> struct Lanes { static constexpr int count = 1; };
template <> struct Lanes<Eight> { static constexpr int count = 8; };
static double get(double v, int) { return v; }
static double get(const Eight& v, int i) { return v[i]; }
static void put(double& v, int, double x) { v = x; }
static void put(Eight& v, int i, double x) { v[i] = x; }

template <class T> static void look(T t, T (&out)[Columns])
{
    T x{}, n[4 * Columns] = {};
    for (int lane = 0; lane < Lanes<T>::count; lane++) {
        double from = get(t, lane) - 191;
        int i = std::clamp(int(from), 0, Nodes - 2);
        put(x, lane, from - i);
        const double* row = table_ + i * 2 * Columns;
        for (int c = 0; c < 4 * Columns; c++) put(n[c], lane, row[c]);
    }
    T x2 = x * x, x3 = x2 * x, h01 = 3 * x2 - 2 * x3, h10 = x3 - 2 * x2 + x, h11 = x3 - x2;
    for (int c = 0; c < Columns; c++)
        out[c] = (1 - h01) * n[c] + h01 * n[2 * Columns + c] + h10 * n[Columns + c] + h11 * n[3 * Columns + c];
}

template <class T> static void rates(const T (&s)[States], T (&r)[States])
{
    T sat[Columns];
    look(s[1], sat);
    T flow = 7e-5 + 1e-12 * sat[0], capacity = 3e4 + 2500 * s[0] + 1e-6 * sat[1];
    r[0] = -flow;
    r[1] = (10 * (265 - s[1]) - flow * (3.6e5 + 1e-6 * sat[2])) / capacity;
    T over = 230 * (s[2] - s[3]);
    r[2] = (2800 - 80 * (s[2] - 265) - over) * (1 / 2.1e5);
    r[3] = over * (1 / 1.2e6);
    r[4] = (s[2] - s[4]) * (1 / 180.0);
    for (int i = 5; i < States; i++) r[i] = (s[2] - s[i]) * (1e-4 * i) + 1e-12 * sat[3] + 1e-12 * sat[4];
}

template <class T> static void step(T (&s)[States], double h)
{
    T k1[States], k2[States], k3[States], k4[States], t[States];
    rates(s, k1);
    for (int i = 0; i < States; i++) t[i] = s[i] + 0.5 * h * k1[i];
    rates(t, k2);
    for (int i = 0; i < States; i++) t[i] = s[i] + 0.5 * h * k2[i];
    rates(t, k3);
    for (int i = 0; i < States; i++) t[i] = s[i] + h * k3[i];
    rates(t, k4);
    for (int i = 0; i < States; i++) s[i] += h / 6 * (k1[i] + 2 * k2[i] + 2 * k3[i] + k4[i]);
}

template <class T> static double nanoseconds(double& sum)
{
    constexpr int steps = 200'000;
    double least = 1e300;
    for (int run = 0; run < 15; run++) {
        T s[States];
        for (int i = 0; i < States; i++)
            for (int lane = 0; lane < Lanes<T>::count; lane++) put(s[i], lane, i == 0 ? 20 : 280 + lane);
        auto begun = std::chrono::steady_clock::now();
        for (int i = 0; i < steps; i++) step(s, 30);
        least = std::min(least, std::chrono::duration<double, std::nano>(std::chrono::steady_clock::now() - begun).count() / steps);
        sum += get(s[1], 0);
    }
    return least / Lanes<T>::count;
}

int main()
{
    for (int i = 0; i < Nodes * 2 * Columns; i++) table_[i] = 1 + std::sin(0.1 * i);
    double sum = 0;
    double one = nanoseconds<double>(sum), eight = nanoseconds<Eight>(sum);
    std::printf("one rig: %.0f ns a step; eight side by side: %.0f ns each (%g)\n", one, eight, sum);
}
