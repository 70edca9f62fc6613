import { useState, type DragEvent } from 'react';

interface DropFile {
  readonly isOver: boolean;
  readonly onDragOver: (event: DragEvent) => void;
  readonly onDragLeave: (event: DragEvent) => void;
  readonly onDrop: (event: DragEvent) => void;
}

/** Properties of a place onto which a file can be dropped. */
export function useDropFile(onFile: (file: File) => void): DropFile {
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
      const [file] = event.dataTransfer.files;
      if (!file) return;
      event.preventDefault();
      onFile(file);
    },
  };
}
