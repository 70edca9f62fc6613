/** Letters by command. */
export const LETTERS: Readonly<Record<string, string>> = {
  alpha: 'α',
  beta: 'β',
  gamma: 'γ',
  delta: 'δ',
  epsilon: 'ε',
  eta: 'η',
  theta: 'θ',
  kappa: 'κ',
  lambda: 'λ',
  mu: 'μ',
  nu: 'ν',
  pi: 'π',
  rho: 'ρ',
  sigma: 'σ',
  tau: 'τ',
  phi: 'ϕ',
  varphi: 'φ',
  chi: 'χ',
  omega: 'ω',
  Delta: 'Δ',
  Phi: 'Φ',
  infty: '∞',
};

/** Names of functions, printed upright. */
export const FUNCTIONS: readonly string[] = ['ln', 'log', 'exp', 'min', 'max', 'sin', 'cos', 'tan'];

/** Signs by command or character. */
export const SIGNS: Readonly<Record<string, string>> = {
  le: '≤',
  ge: '≥',
  ne: '≠',
  pm: '±',
  times: '×',
  cdot: '·',
  sim: '∼',
  mid: '∣',
  sum: '∑',
  lceil: '⌈',
  rceil: '⌉',
  lfloor: '⌊',
  rfloor: '⌋',
  '{': '{',
  '}': '}',
  '#': '#',
  '-': '−',
  '*': '×',
};

/** Widths of spaces by command, in em. */
export const SPACES_em: Readonly<Record<string, number>> = {
  ',': 0.167,
  '!': -0.167,
  ' ': 0.333,
  quad: 1,
  qquad: 2,
};
