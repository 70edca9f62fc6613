export { CANNOT_TELL, plainNumber, type NumberFormat } from './plain-number.ts';
export { quantityForReading } from './quantity-for-reading.ts';
export { quantityForTerminal } from './quantity-for-terminal.ts';
