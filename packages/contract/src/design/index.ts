export { checkedDesign } from './checked-design.ts';
export { designSchema } from './design-schema.ts';
