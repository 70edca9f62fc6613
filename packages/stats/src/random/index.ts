export { fillNormals } from './fill-normals.kernel.ts';
export type { QuasiRandomSequence } from './fill-quasi-random.ts';
export { fillQuasiRandom } from './fill-quasi-random.ts';
export { jump } from './jump.ts';
export { nextUniform } from './next-uniform.ts';
export { nextWord } from './next-word.ts';
export { quasiRandomPoint } from './quasi-random-point.ts';
export { seedStream } from './seed-stream.ts';
export type { Stream } from './stream.ts';
