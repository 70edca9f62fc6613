import { useState, type DragEvent } from 'react';

interface DropFiles {
  readonly isOver: boolean;
  readonly onDragOver: (event: DragEvent) => void;
  readonly onDragLeave: (event: DragEvent) => void;
  readonly onDrop: (event: DragEvent) => void;
}

/** Properties of a place onto which files can be dropped. */
export function useDropFiles(onFiles: (files: readonly File[]) => void): DropFiles {
  const [isOver, setOver] = useState(false);
  return {
    isOver,
    onDragOver: (event) => {
      if (!event.dataTransfer.types.includes('Files')) return;
      event.preventDefault();
      setOver(true);
    },
    onDragLeave: (event) => {
      if (!(event.relatedTarget instanceof Node && event.currentTarget.contains(event.relatedTarget))) setOver(false);
    },
    onDrop: (event) => {
      setOver(false);
      const files = [...event.dataTransfer.files];
      if (files.length === 0) return;
      event.preventDefault();
      onFiles(files);
    },
  };
}
