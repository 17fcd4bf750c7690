/* Written by tests/checks/fit-fluids.ts: change that and run `npm run fluids`. */
import type { RefrigerantId } from '../terms/refrigerants.ts';
import type { FittedProperty } from './fluid.ts';

/** °C → ln(kg/m³) of the saturated liquid, on the bubble line. */
export const LIQUID_DENSITIES: Record<RefrigerantId, FittedProperty> = {
  'R-12': {
    log: {
      limit: 112.02,
      centre: 7.6208343,
      halfWidth: 5.4948052,
      coefficients: [7.086642, 0.31036, -0.055393, 0.026397, -0.007863],
    },
    maxErrorPercent: 0.072,
  },
  'R-22': {
    log: {
      limit: 96.195,
      centre: 7.210019,
      halfWidth: 5.2877808,
      coefficients: [7.011832, 0.313126, -0.053215, 0.030903, -0.014376],
    },
    maxErrorPercent: 0.18,
  },
  'R-32': {
    log: {
      limit: 78.155,
      centre: 6.7650837,
      halfWidth: 4.9888518,
      coefficients: [6.834155, 0.326482, -0.059957, 0.029615, -0.011169],
    },
    maxErrorPercent: 0.09,
  },
  'R-125': {
    log: {
      limit: 66.0773,
      centre: 6.559895,
      halfWidth: 4.6685198,
      coefficients: [7.0908, 0.295774, -0.052691, 0.023695, -0.008179],
    },
    maxErrorPercent: 0.18,
  },
  'R-134a': {
    log: {
      limit: 101.112,
      centre: 7.2967582,
      halfWidth: 5.396232,
      coefficients: [7.013899, 0.323242, -0.058625, 0.02219, -0.012751, 0.008161],
    },
    maxErrorPercent: 0.11,
  },
  'R-143a': {
    log: {
      limit: 72.757,
      centre: 6.591222,
      halfWidth: 4.9308004,
      coefficients: [6.814964, 0.317485, -0.058018, 0.020689, -0.012347, 0.00798],
    },
    maxErrorPercent: 0.15,
  },
  'R-152a': {
    log: {
      limit: 113.311,
      centre: 7.4921895,
      halfWidth: 5.6725741,
      coefficients: [6.695001, 0.336785, -0.060822, 0.021215, -0.015627, 0.011393],
    },
    maxErrorPercent: 0.2,
  },
  'R-290': {
    log: {
      limit: 96.79,
      centre: 7.2964064,
      halfWidth: 5.2251749,
      coefficients: [6.133578, 0.300893, -0.052093, 0.026918, -0.010938],
    },
    maxErrorPercent: 0.16,
  },
  'R-404A': {
    log: {
      limit: 72.1702,
      centre: 6.4848449,
      halfWidth: 5.011685,
      coefficients: [6.926375, 0.32561, -0.067412, 0.022116, -0.004992, 0.012825, -0.008257],
    },
    maxErrorPercent: 0.11,
  },
  'R-407A': {
    log: {
      limit: 82.2969,
      centre: 6.7221896,
      halfWidth: 5.2066369,
      coefficients: [6.990241, 0.336642, -0.068393, 0.021045, -0.011567, 0.025456, -0.014221],
    },
    maxErrorPercent: 0.12,
  },
  'R-407C': {
    log: {
      limit: 86.1879,
      centre: 7.0056047,
      halfWidth: 5.0852141,
      coefficients: [6.986339, 0.32072, -0.056839, 0.02139, -0.019871, 0.013939],
    },
    maxErrorPercent: 0.16,
  },
  'R-407F': {
    log: {
      limit: 82.6537,
      centre: 6.7863953,
      halfWidth: 5.1573772,
      coefficients: [6.96786, 0.332845, -0.065923, 0.020044, -0.009802, 0.022568, -0.01298],
    },
    maxErrorPercent: 0.11,
  },
  'R-410A': {
    log: {
      limit: 71.3941,
      centre: 6.718037,
      halfWidth: 4.7446896,
      coefficients: [6.958459, 0.308721, -0.05082, 0.01494, -0.018096, 0.014189],
    },
    maxErrorPercent: 0.12,
  },
  'R-422D': {
    log: {
      limit: 78.1645,
      centre: 6.7666219,
      halfWidth: 4.9877177,
      coefficients: [7.009078, 0.316582, -0.060419, 0.023246, -0.015521, 0.010056],
    },
    maxErrorPercent: 0.16,
  },
  'R-448A': {
    log: {
      limit: 82.8409,
      centre: 6.8185518,
      halfWidth: 5.1330548,
      coefficients: [6.951471, 0.33155, -0.067004, 0.02221, -0.009044, 0.017062, -0.009776],
    },
    maxErrorPercent: 0.091,
  },
  'R-449A': {
    log: {
      limit: 82.5353,
      centre: 6.7655387,
      halfWidth: 5.1732762,
      coefficients: [6.949297, 0.334829, -0.068182, 0.021229, -0.008235, 0.019523, -0.011917],
    },
    maxErrorPercent: 0.16,
  },
  'R-450A': {
    log: {
      limit: 105.4292,
      centre: 7.2867094,
      halfWidth: 5.5752189,
      coefficients: [6.97831, 0.331491, -0.064048, 0.02753, -0.01692, 0.010285],
    },
    maxErrorPercent: 0.15,
  },
  'R-452A': {
    log: {
      limit: 75.149,
      centre: 6.6264675,
      halfWidth: 4.9988927,
      coefficients: [6.995274, 0.323838, -0.063404, 0.016703, -0.005681, 0.018479, -0.011743],
    },
    maxErrorPercent: 0.16,
  },
  'R-454A': {
    log: {
      limit: 83.6143,
      centre: 6.9425248,
      halfWidth: 5.0413936,
      coefficients: [6.885903, 0.328165, -0.064976, 0.026732, -0.016788, 0.008775],
    },
    maxErrorPercent: 0.15,
  },
  'R-454B': {
    log: {
      limit: 78.3302,
      centre: 6.7931348,
      halfWidth: 4.9682512,
      coefficients: [6.861234, 0.323399, -0.062027, 0.031733, -0.012394],
    },
    maxErrorPercent: 0.16,
  },
  'R-454C': {
    log: {
      limit: 87.6934,
      centre: 6.8970377,
      halfWidth: 5.2558796,
      coefficients: [6.888041, 0.342268, -0.074571, 0.026502, -0.007974, 0.015335, -0.010358],
    },
    maxErrorPercent: 0.16,
  },
  'R-455A': {
    log: {
      limit: 85.6847,
      centre: 6.9272822,
      halfWidth: 5.1427095,
      coefficients: [6.884765, 0.339602, -0.073966, 0.02739, -0.009069, 0.014134, -0.009081],
    },
    maxErrorPercent: 0.12,
  },
  'R-507A': {
    log: {
      limit: 70.6658,
      centre: 6.6050919,
      halfWidth: 4.8258224,
      coefficients: [6.944702, 0.309385, -0.057858, 0.021268, -0.011295, 0.007263],
    },
    maxErrorPercent: 0.12,
  },
  'R-513A': {
    log: {
      limit: 95.4607,
      centre: 7.0945283,
      halfWidth: 5.3738598,
      coefficients: [6.958216, 0.325719, -0.059666, 0.022822, -0.014026, 0.008632],
    },
    maxErrorPercent: 0.17,
  },
  'R-600a': {
    log: {
      limit: 134.71,
      centre: 7.7202297,
      halfWidth: 6.2336228,
      coefficients: [6.170423, 0.343368, -0.066299, 0.030766, -0.021212, 0.011752],
    },
    maxErrorPercent: 0.18,
  },
  'R-717': {
    log: {
      limit: 132.46,
      centre: 7.720717,
      halfWidth: 6.1522783,
      coefficients: [6.254942, 0.36897, -0.072561, 0.030093, -0.023328, 0.012191],
    },
    maxErrorPercent: 0.19,
  },
  'R-744': {
    log: {
      limit: 31.0282,
      centre: 5.6633029,
      halfWidth: 3.6418677,
      coefficients: [6.839111, 0.259334, -0.039991, 0.015806, -0.005487],
    },
    maxErrorPercent: 0.093,
  },
  'R-1234yf': {
    log: {
      limit: 94.75,
      centre: 6.9699277,
      halfWidth: 5.4699277,
      coefficients: [6.914917, 0.334964, -0.066733, 0.021443, -0.003274, 0.011202, -0.008431],
    },
    maxErrorPercent: 0.16,
  },
  'R-1234zeE': {
    log: {
      limit: 109.413,
      centre: 7.5582945,
      halfWidth: 5.4575804,
      coefficients: [6.970475, 0.3101, -0.057573, 0.030569, -0.009216],
    },
    maxErrorPercent: 0.13,
  },
  'R-1270': {
    log: {
      limit: 91.111,
      centre: 7.0964923,
      halfWidth: 5.1962291,
      coefficients: [6.167763, 0.306796, -0.053894, 0.027422, -0.010386],
    },
    maxErrorPercent: 0.14,
  },
};
