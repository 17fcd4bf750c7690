/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import type { RefrigerantId } from '../terms/refrigerants.ts';
import type { FittedProperty } from './fluid.ts';

/** °C → ln(kg/m³) of the saturated vapour, on the dew line. */
export const VAPOUR_DENSITIES: Record<RefrigerantId, FittedProperty> = {
  'R-12': {
    log: {
      limit: 112.02,
      centre: 7.6208343,
      halfWidth: 5.4948052,
      coefficients: [
        4.341627, -2.036712, -0.884235, -0.488642, -0.215577, -0.104096, -0.103792, -0.061901,
      ],
    },
    maxErrorPercent: 0.091,
  },
  'R-22': {
    log: {
      limit: 96.195,
      centre: 7.210019,
      halfWidth: 5.2877808,
      coefficients: [
        4.303028, -1.991507, -0.834343, -0.442791, -0.197716, -0.085127, -0.078821, -0.05042,
      ],
    },
    maxErrorPercent: 0.069,
  },
  'R-32': {
    log: {
      limit: 78.155,
      centre: 6.7650837,
      halfWidth: 4.9888518,
      coefficients: [
        4.072741, -1.960941, -0.74649, -0.368277, -0.163306, -0.072204, -0.052343, -0.031544,
      ],
    },
    maxErrorPercent: 0.029,
  },
  'R-125': {
    log: {
      limit: 66.0773,
      centre: 6.559895,
      halfWidth: 4.6685198,
      coefficients: [4.447613, -1.833798, -0.693215, -0.306577, -0.135571, -0.105977, -0.04159],
    },
    maxErrorPercent: 0.13,
  },
  'R-134a': {
    log: {
      limit: 101.112,
      centre: 7.2967582,
      halfWidth: 5.396232,
      coefficients: [
        4.134677, -2.190465, -0.962816, -0.533348, -0.243159, -0.108302, -0.105942, -0.066476,
      ],
    },
    maxErrorPercent: 0.081,
  },
  'R-143a': {
    log: {
      limit: 72.757,
      centre: 6.591222,
      halfWidth: 4.9308004,
      coefficients: [
        4.178982, -1.87459, -0.706821, -0.349967, -0.150138, -0.065438, -0.044634, -0.031399,
      ],
    },
    maxErrorPercent: 0.025,
  },
  'R-152a': {
    log: {
      limit: 113.311,
      centre: 7.4921895,
      halfWidth: 5.6725741,
      coefficients: [
        3.802122, -2.227234, -1.001259, -0.558376, -0.257365, -0.12155, -0.121876, -0.084055,
      ],
    },
    maxErrorPercent: 0.11,
  },
  'R-290': {
    log: {
      limit: 96.79,
      centre: 7.2964064,
      halfWidth: 5.2251749,
      coefficients: [
        3.49488, -1.886961, -0.764179, -0.401259, -0.173006, -0.077455, -0.069948, -0.041267,
      ],
    },
    maxErrorPercent: 0.048,
  },
  'R-404A': {
    log: {
      limit: 72.1702,
      centre: 6.4848449,
      halfWidth: 5.011685,
      coefficients: [
        4.328989, -1.907881, -0.732579, -0.370752, -0.161689, -0.077804, -0.052801, -0.035679,
      ],
    },
    maxErrorPercent: 0.03,
  },
  'R-407A': {
    log: {
      limit: 82.2969,
      centre: 6.7221896,
      halfWidth: 5.2066369,
      coefficients: [
        4.266903, -2.058876, -0.855975, -0.452784, -0.204282, -0.096013, -0.08039, -0.0477,
      ],
    },
    maxErrorPercent: 0.081,
  },
  'R-407C': {
    log: {
      limit: 86.1879,
      centre: 7.0056047,
      halfWidth: 5.0852141,
      coefficients: [
        4.13751, -2.080022, -0.868436, -0.452947, -0.204192, -0.093943, -0.079048, -0.043948,
      ],
    },
    maxErrorPercent: 0.071,
  },
  'R-407F': {
    log: {
      limit: 82.6537,
      centre: 6.7863953,
      halfWidth: 5.1573772,
      coefficients: [
        4.205459, -2.056455, -0.850176, -0.445097, -0.200129, -0.092582, -0.078718, -0.04583,
      ],
    },
    maxErrorPercent: 0.075,
  },
  'R-410A': {
    log: {
      limit: 71.3941,
      centre: 6.718037,
      halfWidth: 4.7446896,
      coefficients: [4.226954, -1.898514, -0.713749, -0.325107, -0.138666, -0.105967, -0.047918],
    },
    maxErrorPercent: 0.14,
  },
  'R-422D': {
    log: {
      limit: 78.1645,
      centre: 6.7666219,
      halfWidth: 4.9877177,
      coefficients: [
        4.292015, -1.997629, -0.81525, -0.420471, -0.192528, -0.094643, -0.067792, -0.037098,
      ],
    },
    maxErrorPercent: 0.059,
  },
  'R-448A': {
    log: {
      limit: 82.8409,
      centre: 6.8185518,
      halfWidth: 5.1330548,
      coefficients: [
        4.208611, -2.031132, -0.832442, -0.435715, -0.194763, -0.09133, -0.07459, -0.04361,
      ],
    },
    maxErrorPercent: 0.068,
  },
  'R-449A': {
    log: {
      limit: 82.5353,
      centre: 6.7655387,
      halfWidth: 5.1732762,
      coefficients: [
        4.230066, -2.024747, -0.832817, -0.43528, -0.196813, -0.090102, -0.075711, -0.045706,
      ],
    },
    maxErrorPercent: 0.069,
  },
  'R-450A': {
    log: {
      limit: 105.4292,
      centre: 7.2867094,
      halfWidth: 5.5752189,
      coefficients: [
        4.167163, -2.208967, -0.98534, -0.556366, -0.255413, -0.119154, -0.122424, -0.078043,
      ],
    },
    maxErrorPercent: 0.11,
  },
  'R-452A': {
    log: {
      limit: 75.149,
      centre: 6.6264675,
      halfWidth: 4.9988927,
      coefficients: [
        4.328269, -1.937263, -0.76901, -0.380243, -0.172698, -0.086183, -0.057141, -0.029873,
      ],
    },
    maxErrorPercent: 0.046,
  },
  'R-454A': {
    log: {
      limit: 83.6143,
      centre: 6.9425248,
      halfWidth: 5.0413936,
      coefficients: [
        4.125902, -1.989081, -0.797752, -0.410562, -0.18457, -0.082633, -0.064903, -0.039413,
      ],
    },
    maxErrorPercent: 0.051,
  },
  'R-454B': {
    log: {
      limit: 78.3302,
      centre: 6.7931348,
      halfWidth: 4.9682512,
      coefficients: [
        4.131285, -1.941262, -0.744628, -0.372168, -0.162937, -0.071718, -0.052983, -0.03438,
      ],
    },
    maxErrorPercent: 0.031,
  },
  'R-454C': {
    log: {
      limit: 87.6934,
      centre: 6.8970377,
      halfWidth: 5.2558796,
      coefficients: [
        4.182477, -2.026661, -0.833954, -0.442257, -0.203601, -0.090341, -0.074864, -0.049835,
      ],
    },
    maxErrorPercent: 0.065,
  },
  'R-455A': {
    log: {
      limit: 85.6847,
      centre: 6.9272822,
      halfWidth: 5.1427095,
      coefficients: [
        4.147648, -2.0119, -0.8204, -0.427144, -0.195065, -0.086871, -0.071237, -0.043063,
      ],
    },
    maxErrorPercent: 0.065,
  },
  'R-507A': {
    log: {
      limit: 70.6658,
      centre: 6.6050919,
      halfWidth: 4.8258224,
      coefficients: [4.292587, -1.875531, -0.708189, -0.324506, -0.140252, -0.11618, -0.05032],
    },
    maxErrorPercent: 0.19,
  },
  'R-513A': {
    log: {
      limit: 95.4607,
      centre: 7.0945283,
      halfWidth: 5.3738598,
      coefficients: [
        4.188051, -2.099368, -0.900924, -0.490222, -0.228566, -0.09859, -0.090693, -0.06442,
      ],
    },
    maxErrorPercent: 0.064,
  },
  'R-600a': {
    log: {
      limit: 134.71,
      centre: 7.7202297,
      halfWidth: 6.2336228,
      coefficients: [
        3.463338, -2.21592, -1.032888, -0.623151, -0.377837, -0.155589, -0.057352, -0.11712,
        -0.066979,
      ],
    },
    maxErrorPercent: 0.13,
  },
  'R-717': {
    log: {
      limit: 132.46,
      centre: 7.720717,
      halfWidth: 6.1522783,
      coefficients: [
        3.345171, -2.374522, -1.101208, -0.655456, -0.312499, -0.151971, -0.179334, -0.120547,
      ],
    },
    maxErrorPercent: 0.19,
  },
  'R-744': {
    log: {
      limit: 31.0282,
      centre: 5.6633029,
      halfWidth: 3.6418677,
      coefficients: [4.548045, -1.308474, -0.362774, -0.134733, -0.054219, -0.024467],
    },
    maxErrorPercent: 0.078,
  },
  'R-1234yf': {
    log: {
      limit: 94.75,
      centre: 6.9699277,
      halfWidth: 5.4699277,
      coefficients: [
        4.223401, -2.074594, -0.875846, -0.476541, -0.231464, -0.097138, -0.079858, -0.069475,
      ],
    },
    maxErrorPercent: 0.036,
  },
  'R-1234zeE': {
    log: {
      limit: 109.413,
      centre: 7.5582945,
      halfWidth: 5.4575804,
      coefficients: [
        4.042491, -2.229675, -1.002433, -0.553959, -0.257837, -0.126063, -0.124046, -0.070599,
      ],
    },
    maxErrorPercent: 0.12,
  },
  'R-1270': {
    log: {
      limit: 91.111,
      centre: 7.0964923,
      halfWidth: 5.1962291,
      coefficients: [
        3.592954, -1.842671, -0.733067, -0.375069, -0.163882, -0.07599, -0.06398, -0.03686,
      ],
    },
    maxErrorPercent: 0.053,
  },
};
