import { useRef, type PointerEvent } from 'react';
import type { CarryOut } from './lever-move.ts';

interface Held {
  readonly y_px: number;
  readonly from_mm: number;
  readonly px_per_mm: number;
  isMoved: boolean;
}

type Handler = (event: PointerEvent<HTMLElement>) => void;

/** A pointer that moves less than this was a click. */
const CLICK_px = 3;

/**
 * Dragging a pin: it follows the pointer that took hold of it.
 *
 * @param pin - depth where it stands, what carries the drag out, and what a mere click does
 * @returns handlers of the element that is taken hold of
 */
export function usePinDrag(pin: {
  readonly depth_mm: number;
  readonly carryOut: CarryOut | undefined;
  readonly onClick: () => void;
}): Readonly<Record<'onPointerDown' | 'onPointerMove' | 'onPointerUp' | 'onPointerCancel', Handler>> {
  const held = useRef<Held>(undefined);
  const drag = (event: PointerEvent, phase: 'moving' | 'settled'): void => {
    const { current } = held;
    if (!current) return;
    const down_px = event.clientY - current.y_px;
    if (Math.abs(down_px) >= CLICK_px) current.isMoved = true;
    const { from_mm, px_per_mm } = current;
    if (current.isMoved) pin.carryOut?.({ kind: 'drag', from_mm, down_px, px_per_mm }, phase);
  };
  const letGo = (event: PointerEvent): void => {
    drag(event, 'settled');
    const wasClick = held.current?.isMoved === false;
    held.current = undefined;
    if (wasClick) pin.onClick();
  };
  return {
    onPointerDown: (event) => {
      if (!pin.carryOut || event.button !== 0) return;
      const { currentTarget } = event;
      currentTarget.setPointerCapture(event.pointerId);
      const px_per_mm = parseFloat(getComputedStyle(currentTarget).getPropertyValue('--mm'));
      held.current = { y_px: event.clientY, from_mm: pin.depth_mm, px_per_mm, isMoved: false };
    },
    onPointerMove: (event) => {
      drag(event, 'moving');
    },
    onPointerUp: letGo,
    onPointerCancel: letGo,
  };
}
