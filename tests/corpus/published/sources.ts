/** Open number readers whose published tests gave the sentences and values of these tables. */
export const PUBLISHED = {
  wtn: {
    repository: 'finnfiddle/words-to-numbers',
    paths: ['src/__tests__/index.js'],
    commit: '08290b04d061d1e4d9f389bd5296e32dc318b53a',
    licence: 'MIT',
  },
  t2n: {
    repository: 'allo-media/text2num',
    paths: ['tests/test_text_to_num_en.py'],
    commit: '0139ebf9461d30951ddf622474a6115745e1d00c',
    licence: 'MIT',
  },
  w2n: {
    repository: 'akshaynagpal/w2n',
    paths: ['unit_testing.py'],
    commit: '08532215cac60b2927836b2a3fd127b24f3dda7a',
    licence: 'MIT',
  },
  duckling: {
    repository: 'facebook/duckling',
    paths: ['Duckling/Numeral/EN/Corpus.hs'],
    commit: '181037e469991effe01ba764135792ec1c4e31b8',
    licence: 'BSD-3-Clause',
  },
  recognizers: {
    repository: 'microsoft/Recognizers-Text',
    paths: ['Specs/Number/English/NumberModel.json'],
    commit: '004f8c27c567c268a3531ae52cc58b4e81cfaebe',
    licence: 'MIT',
  },
  compromise: {
    repository: 'spencermountain/compromise',
    paths: ['tests/three/numbers/number-parse.test.js', 'value.test.js', 'misc.test.js'],
    commit: '30898a10f0b39119fd8d51bf89f0679c260a7f37',
    licence: 'MIT',
  },
  nemoCardinal: {
    repository: 'NVIDIA/NeMo-text-processing',
    paths: [
      'tests/nemo_text_processing/en/data_inverse_text_normalization/test_cases_cardinal.txt',
    ],
    commit: '7e780bba5c16e1ae2cc240f831bc685f30d69fab',
    licence: 'Apache-2.0',
  },
  nemoDecimal: {
    repository: 'NVIDIA/NeMo-text-processing',
    paths: ['tests/nemo_text_processing/en/data_inverse_text_normalization/test_cases_decimal.txt'],
    commit: '60dfc3a6c93a97fd04100173e83ee4d8bad595ef',
    licence: 'Apache-2.0',
  },
  nemoMeasure: {
    repository: 'NVIDIA/NeMo-text-processing',
    paths: ['tests/nemo_text_processing/en/data_inverse_text_normalization/test_cases_measure.txt'],
    commit: '40455b35e951673f3e85e45edfd37f44d255865c',
    licence: 'Apache-2.0',
  },
} as const;
