/**
 * State of one random stream: four 32-bit words of a xoshiro128++ generator, not all of them 0.
 * Functions that draw from a stream move it on in place; nothing else holds state.
 */
export interface Stream {
  readonly state: Int32Array;
}
