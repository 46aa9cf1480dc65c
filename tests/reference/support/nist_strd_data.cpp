#include "tests/reference/support/nist_strd_data.h"

#include <cmath>

// A data file in C++: longer than a source file should be, because splitting certified tables
// would only make them harder to compare with their source.
namespace nist_strd {

namespace {

using Parameters = std::span<const double>;
using Derivatives = std::span<double>;

const std::vector<double> misra_y = {10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02,
                                     44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78};
const std::vector<double> misra_x = {77.6,  114.9, 141.1, 190.8, 239.9, 289.0, 332.8,
                                     378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0};

/// b1 (1 - exp(-b2 x))
double rise(double x, Parameters b, Derivatives d) {
    const double e = std::exp(-b[1] * x);
    d[0] = 1 - e;
    d[1] = b[0] * x * e;
    return b[0] * (1 - e);
}

/// b1 (1 - (1 + b2 x / 2)^-2)
double misra1b(double x, Parameters b, Derivatives d) {
    const double base = 1 + b[1] * x / 2;
    d[0] = 1 - 1 / (base * base);
    d[1] = b[0] * x / (base * base * base);
    return b[0] * d[0];
}

/// b1 / (1 + exp(b2 - b3 x))
double logistic(double x, Parameters b, Derivatives d) {
    const double e = std::exp(b[1] - b[2] * x);
    const double q = 1 + e;
    d[0] = 1 / q;
    d[1] = -b[0] * e / (q * q);
    d[2] = b[0] * e * x / (q * q);
    return b[0] / q;
}

/// exp(-b1 x) / (b2 + b3 x)
double chwirut(double x, Parameters b, Derivatives d) {
    const double q = b[1] + b[2] * x;
    const double value = std::exp(-b[0] * x) / q;
    d[0] = -x * value;
    d[1] = -value / q;
    d[2] = -x * value / q;
    return value;
}

/// (b1 + b2 x + b3 x^2 + b4 x^3) / (1 + b5 x + b6 x^2 + b7 x^3)
double thurber(double x, Parameters b, Derivatives d) {
    const double over = b[0] + x * (b[1] + x * (b[2] + x * b[3]));
    const double under = 1 + x * (b[4] + x * (b[5] + x * b[6]));
    const double value = over / under;
    double power = 1;
    for (std::size_t i = 0; i < 4; ++i) {
        d[i] = power / under;
        power *= x;
    }
    power = x;
    for (std::size_t i = 4; i < 7; ++i) {
        d[i] = -value * power / under;
        power *= x;
    }
    return value;
}

/// b1 (x^2 + x b2) / (x^2 + x b3 + b4)
double mgh09(double x, Parameters b, Derivatives d) {
    const double over = x * x + x * b[1];
    const double under = x * x + x * b[2] + b[3];
    const double value = b[0] * over / under;
    d[0] = over / under;
    d[1] = b[0] * x / under;
    d[2] = -value * x / under;
    d[3] = -value / under;
    return value;
}

Set misra1a_set() {
    return {"Misra1a",
            misra_y,
            misra_x,
            {{500, 1e-4}, {250, 5e-4}},
            {238.94212918, 5.5015643181e-04},
            {2.7070075241, 7.2668688436e-06},
            0.12455138894,
            rise};
}

Set misra1b_set() {
    return {"Misra1b",
            misra_y,
            misra_x,
            {{500, 1e-4}, {300, 2e-4}},
            {337.99746163, 3.9039091287e-04},
            {3.1643950207, 4.2547321834e-06},
            7.5464681533e-02,
            misra1b};
}

Set boxbod_set() {
    return {"BoxBOD",
            {109, 149, 149, 191, 213, 224},
            {1, 2, 3, 5, 7, 10},
            {{1, 1}, {100, 0.75}},
            {213.80940889, 0.54723748542},
            {12.354515176, 0.10455993237},
            1168.0088766,
            rise};
}

Set rat42_set() {
    return {"Rat42",
            {8.93, 10.8, 18.59, 22.33, 39.35, 56.11, 61.73, 64.62, 67.08},
            {9, 14, 21, 28, 42, 57, 63, 70, 79},
            {{100, 1, 0.1}, {75, 2.5, 0.07}},
            {72.462237576, 2.6180768402, 0.067359200066},
            {1.7340283401, 0.088295217536, 0.0034465663377},
            8.0565229338,
            logistic};
}

Set chwirut2_set() {
    return {"Chwirut2",
            {92.9,    57.1,  31.05, 11.5875, 8.025, 63.6,  21.4, 14.25, 8.475, 63.8,  26.8,
             16.4625, 7.125, 67.3,  41,      21.15, 8.175, 81.5, 13.12, 59.9,  14.62, 32.9,
             5.44,    12.56, 5.44,  32,      13.95, 75.8,  20,   10.42, 59.5,  21.67, 8.55,
             62,      20.2,  7.76,  3.75,    11.81, 54.7,  23.7, 11.55, 61.3,  17.7,  8.74,
             59.2,    16.3,  8.62,  81,      4.87,  14.62, 81.7, 17.17, 81.3,  28.9},
            {0.5,  1,    1.75, 3.75, 5.75, 0.875, 2.25, 3.25, 5.25, 0.75, 1.75, 2.75, 4.75, 0.625,
             1.25, 2.25, 4.25, 0.5,  3,    0.75,  3,    1.5,  6,    3,    6,    1.5,  3,    0.5,
             2,    4,    0.75, 2,    5,    0.75,  2.25, 3.75, 5.75, 3,    0.75, 2.5,  4,    0.75,
             2.5,  4,    0.75, 2.5,  4,    0.5,   6,    3,    0.5,  2.75, 0.5,  1.75},
            {{0.1, 0.01, 0.02}, {0.15, 0.008, 0.01}},
            {0.16657666537, 5.1653291286e-03, 0.012150007096},
            {0.038303286810, 6.6621605126e-04, 0.0015304234767},
            513.04802941,
            chwirut};
}

Set thurber_set() {
    return {"Thurber",
            {80.574,   84.248,   87.264,   87.195,   89.076,   89.608,   89.868,   90.101,
             92.405,   95.854,   100.696,  101.060,  401.672,  390.724,  567.534,  635.316,
             733.054,  759.087,  894.206,  990.785,  1090.109, 1080.914, 1122.643, 1178.351,
             1260.531, 1273.514, 1288.339, 1327.543, 1353.863, 1414.509, 1425.208, 1421.384,
             1442.962, 1464.350, 1468.705, 1447.894, 1457.628},
            {-3.067, -2.981, -2.921, -2.912, -2.840, -2.797, -2.702, -2.699, -2.633, -2.481,
             -2.363, -2.322, -1.501, -1.460, -1.274, -1.212, -1.100, -1.046, -0.915, -0.714,
             -0.566, -0.545, -0.400, -0.309, -0.109, -0.103, 0.010,  0.119,  0.377,  0.790,
             0.963,  1.006,  1.115,  1.572,  1.841,  2.047,  2.200},
            {{1000, 1000, 400, 40, 0.7, 0.3, 0.03}, {1300, 1500, 500, 75, 1, 0.4, 0.05}},
            {1.2881396800e+03, 1.4910792535e+03, 5.8323836877e+02, 7.5416644291e+01,
             9.6629502864e-01, 3.9797285797e-01, 4.9727297349e-02},
            {4.6647963344, 3.9571156086e+01, 2.8698696102e+01, 5.5675370270, 3.1333340687e-02,
             1.4984928198e-02, 6.5842344623e-03},
            5.6427082397e+03,
            thurber};
}

Set mgh09_set() {
    return {
        "MGH09",
        {0.1957, 0.1947, 0.1735, 0.1600, 0.0844, 0.0627, 0.0456, 0.0342, 0.0323, 0.0235, 0.0246},
        {4, 2, 1, 0.5, 0.25, 0.167, 0.125, 0.1, 0.0833, 0.0714, 0.0625},
        {{25, 39, 41.5, 39}, {0.25, 0.39, 0.415, 0.39}},
        {1.9280693458e-01, 1.9128232873e-01, 1.2305650693e-01, 1.3606233068e-01},
        {1.1435312227e-02, 1.9633220911e-01, 8.0842031232e-02, 9.0025542308e-02},
        3.0750560385e-04,
        mgh09};
}

} // namespace

std::vector<Set> sets() {
    return {misra1a_set(),  misra1b_set(), boxbod_set(), rat42_set(),
            chwirut2_set(), thurber_set(), mgh09_set()};
}

} // namespace nist_strd
