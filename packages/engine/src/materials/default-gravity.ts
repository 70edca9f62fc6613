/** Gravity where none is given. @source standard gravity 9.80665 m/s2 (3rd CGPM 1901), rounded as in engineering tables */
export const DEFAULT_GRAVITY_m_per_s2 = 9.81;
