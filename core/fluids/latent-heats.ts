/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import type { RefrigerantId } from '../terms/refrigerants.ts';
import type { FittedProperty } from './fluid.ts';

/** °C → ln(kJ/kg) from the bubble line to the dew line at one temperature. */
export const LATENT_HEATS: Record<RefrigerantId, FittedProperty> = {
  'R-12': {
    log: {
      limit: 112.02,
      centre: 7.6208343,
      halfWidth: 5.4948052,
      coefficients: [
        4.783137, 0.557763, -0.233801, 0.099407, -0.030956, 0.019312, -0.038325, 0.025325,
      ],
    },
    maxErrorPercent: 0.17,
  },
  'R-22': {
    log: {
      limit: 96.195,
      centre: 7.210019,
      halfWidth: 5.2877808,
      coefficients: [
        5.085003, 0.579165, -0.233322, 0.098763, -0.032864, 0.020257, -0.042953, 0.028649,
      ],
    },
    maxErrorPercent: 0.17,
  },
  'R-32': {
    log: {
      limit: 78.155,
      centre: 6.7650837,
      halfWidth: 4.9888518,
      coefficients: [
        5.541898, 0.593065, -0.239634, 0.099088, -0.031506, 0.02243, -0.040515, 0.023274,
      ],
    },
    maxErrorPercent: 0.18,
  },
  'R-125': {
    log: {
      limit: 66.0773,
      centre: 6.559895,
      halfWidth: 4.6685198,
      coefficients: [
        4.722663, 0.567539, -0.219763, 0.081334, -0.016782, 0.024471, -0.03982, 0.018586,
      ],
    },
    maxErrorPercent: 0.13,
  },
  'R-134a': {
    log: {
      limit: 101.112,
      centre: 7.2967582,
      halfWidth: 5.396232,
      coefficients: [
        5.038982, 0.590145, -0.233198, 0.109623, -0.05021, 0.007663, -0.006748, 0.037926, -0.022173,
      ],
    },
    maxErrorPercent: 0.11,
  },
  'R-143a': {
    log: {
      limit: 72.757,
      centre: 6.591222,
      halfWidth: 4.9308004,
      coefficients: [
        5.033634, 0.593587, -0.240088, 0.109481, -0.049689, 0.005911, -0.011356, 0.043513,
        -0.024469,
      ],
    },
    maxErrorPercent: 0.15,
  },
  'R-152a': {
    log: {
      limit: 113.311,
      centre: 7.4921895,
      halfWidth: 5.6725741,
      coefficients: [
        5.455626, 0.597418, -0.242579, 0.112283, -0.053195, -0.003885, -0.002876, 0.057872,
        -0.035418,
      ],
    },
    maxErrorPercent: 0.18,
  },
  'R-290': {
    log: {
      limit: 96.79,
      centre: 7.2964064,
      halfWidth: 5.2251749,
      coefficients: [
        5.702243, 0.553927, -0.230152, 0.094444, -0.032123, 0.020758, -0.03724, 0.023214,
      ],
    },
    maxErrorPercent: 0.16,
  },
  'R-404A': {
    log: {
      limit: 72.1702,
      centre: 6.4848449,
      halfWidth: 5.011685,
      coefficients: [
        4.897527, 0.619727, -0.257914, 0.117131, -0.066138, 0.041811, 0.004953, 0.00585, -0.048988,
        0.029307,
      ],
    },
    maxErrorPercent: 0.15,
  },
  'R-407A': {
    log: {
      limit: 82.2969,
      centre: 6.7221896,
      halfWidth: 5.2066369,
      coefficients: [
        5.043152, 0.618231, -0.254679, 0.113826, -0.065227, 0.046824, -0.00057, 0.00697, -0.049631,
        0.030328,
      ],
    },
    maxErrorPercent: 0.18,
  },
  'R-407C': {
    log: {
      limit: 86.1879,
      centre: 7.0056047,
      halfWidth: 5.0852141,
      coefficients: [
        5.124642, 0.575874, -0.227354, 0.094943, -0.023328, 0.020971, -0.046714, 0.028045,
      ],
    },
    maxErrorPercent: 0.18,
  },
  'R-407F': {
    log: {
      limit: 82.6537,
      centre: 6.7863953,
      halfWidth: 5.1573772,
      coefficients: [
        5.137337, 0.604722, -0.244307, 0.106113, -0.058145, 0.041046, -0.003124, 0.006282,
        -0.038292, 0.023344,
      ],
    },
    maxErrorPercent: 0.13,
  },
  'R-410A': {
    log: {
      limit: 71.3941,
      centre: 6.718037,
      halfWidth: 4.7446896,
      coefficients: [
        5.216394, 0.572308, -0.222601, 0.086385, -0.020849, 0.025757, -0.04565, 0.023305,
      ],
    },
    maxErrorPercent: 0.13,
  },
  'R-422D': {
    log: {
      limit: 78.1645,
      centre: 6.7666219,
      halfWidth: 4.9877177,
      coefficients: [
        4.850795, 0.590404, -0.238407, 0.106943, -0.040486, 0.013341, -0.02149, 0.038699, -0.018633,
      ],
    },
    maxErrorPercent: 0.14,
  },
  'R-448A': {
    log: {
      limit: 82.8409,
      centre: 6.8185518,
      halfWidth: 5.1330548,
      coefficients: [
        5.079857, 0.598895, -0.245666, 0.114157, -0.04993, 0.01117, -0.019466, 0.050343, -0.027132,
      ],
    },
    maxErrorPercent: 0.19,
  },
  'R-449A': {
    log: {
      limit: 82.5353,
      centre: 6.7655387,
      halfWidth: 5.1732762,
      coefficients: [
        5.063285, 0.607763, -0.247843, 0.110674, -0.062593, 0.040191, 0.004292, 0.003689, -0.043625,
        0.026651,
      ],
    },
    maxErrorPercent: 0.16,
  },
  'R-450A': {
    log: {
      limit: 105.4292,
      centre: 7.2867094,
      halfWidth: 5.5752189,
      coefficients: [
        4.969813, 0.611681, -0.257968, 0.127515, -0.057413, 0.005362, -0.011574, 0.058377,
        -0.033581,
      ],
    },
    maxErrorPercent: 0.2,
  },
  'R-452A': {
    log: {
      limit: 75.149,
      centre: 6.6264675,
      halfWidth: 4.9988927,
      coefficients: [
        4.874285, 0.59594, -0.240122, 0.099052, -0.048721, 0.042002, -0.005311, -0.001219,
        -0.033274, 0.023321,
      ],
    },
    maxErrorPercent: 0.13,
  },
  'R-454A': {
    log: {
      limit: 83.6143,
      centre: 6.9425248,
      halfWidth: 5.0413936,
      coefficients: [
        5.131908, 0.577925, -0.23369, 0.111859, -0.05068, 0.005307, -0.007486, 0.041024, -0.024231,
      ],
    },
    maxErrorPercent: 0.13,
  },
  'R-454B': {
    log: {
      limit: 78.3302,
      centre: 6.7931348,
      halfWidth: 4.9682512,
      coefficients: [
        5.35638, 0.587445, -0.234942, 0.107175, -0.049935, 0.010372, -0.009868, 0.035345, -0.02051,
      ],
    },
    maxErrorPercent: 0.12,
  },
  'R-454C': {
    log: {
      limit: 87.6934,
      centre: 6.8970377,
      halfWidth: 5.2558796,
      coefficients: [
        5.015284, 0.607711, -0.256344, 0.124424, -0.073239, 0.033346, 0.018727, 0.006583, -0.056768,
        0.032097,
      ],
    },
    maxErrorPercent: 0.15,
  },
  'R-455A': {
    log: {
      limit: 85.6847,
      centre: 6.9272822,
      halfWidth: 5.1427095,
      coefficients: [
        5.044548, 0.592572, -0.246525, 0.123771, -0.055838, -0.000674, -0.007012, 0.055755,
        -0.033411,
      ],
    },
    maxErrorPercent: 0.18,
  },
  'R-507A': {
    log: {
      limit: 70.6658,
      centre: 6.6050919,
      halfWidth: 4.8258224,
      coefficients: [
        4.897723, 0.58449, -0.233015, 0.103026, -0.040618, 0.013438, -0.0184, 0.035164, -0.017592,
      ],
    },
    maxErrorPercent: 0.12,
  },
  'R-513A': {
    log: {
      limit: 95.4607,
      centre: 7.0945283,
      halfWidth: 5.3738598,
      coefficients: [
        4.922786, 0.598545, -0.244595, 0.118744, -0.052431, -0.003276, -0.003632, 0.0522, -0.03152,
      ],
    },
    maxErrorPercent: 0.18,
  },
  'R-600a': {
    log: {
      limit: 134.71,
      centre: 7.7202297,
      halfWidth: 6.2336228,
      coefficients: [
        5.565075, 0.627379, -0.28974, 0.137692, -0.0599, 0.048513, -0.041174, -0.013648, 0.012949,
        0.051712, -0.036369,
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
        6.825941, 0.654345, -0.293124, 0.127575, -0.08903, 0.059938, 0.028473, -0.009802, -0.078206,
        0.049176,
      ],
    },
    maxErrorPercent: 0.2,
  },
  'R-744': {
    log: {
      limit: 31.0282,
      centre: 5.6633029,
      halfWidth: 3.6418677,
      coefficients: [5.455387, 0.523106, -0.1692, 0.059759, -0.02956, 0.027888, -0.012971],
    },
    maxErrorPercent: 0.13,
  },
  'R-1234yf': {
    log: {
      limit: 94.75,
      centre: 6.9699277,
      halfWidth: 5.4699277,
      coefficients: [
        4.839099, 0.618967, -0.26692, 0.122143, -0.061212, 0.049755, -0.013771, -0.03151, -0.004809,
        0.058628, -0.030817,
      ],
    },
    maxErrorPercent: 0.14,
  },
  'R-1234zeE': {
    log: {
      limit: 109.413,
      centre: 7.5582945,
      halfWidth: 5.4575804,
      coefficients: [
        4.966113, 0.567471, -0.229842, 0.097694, -0.02472, 0.020624, -0.035482, 0.022158,
      ],
    },
    maxErrorPercent: 0.1,
  },
  'R-1270': {
    log: {
      limit: 91.111,
      centre: 7.0964923,
      halfWidth: 5.1962291,
      coefficients: [
        5.709236, 0.56858, -0.235773, 0.099227, -0.033277, 0.021813, -0.040025, 0.024543,
      ],
    },
    maxErrorPercent: 0.16,
  },
};
