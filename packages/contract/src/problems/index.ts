export { PROBLEM_STATUS, problemSchema, type Problem, type ProblemCode } from './problem-schema.ts';
