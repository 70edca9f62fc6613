import { useState } from 'react';

/** @returns the value as it was when the levers last stood still, and as it is once they do */
export function useAtRest<Value>(value: Value, isMoving: boolean): Value {
  const [last, setLast] = useState(value);
  if (!isMoving && value !== last) setLast(value);
  return isMoving ? last : value;
}
