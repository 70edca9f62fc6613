import { useRef, type ReactElement, type ReactNode } from 'react';

interface FileButtonProps {
  readonly className?: string;
  readonly onFile: (file: File) => void;
  readonly children: ReactNode;
}

/** A button that asks for a brief file. */
export function FileButton({ className, onFile, children }: FileButtonProps): ReactElement {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button
        type="button"
        className={className}
        onClick={() => {
          input.current?.click();
        }}
      >
        {children}
      </button>
      <input
        ref={input}
        type="file"
        hidden
        accept=".yaml,.yml,text/yaml,text/plain"
        onChange={(event) => {
          const [file] = event.target.files ?? [];
          event.target.value = '';
          if (file) onFile(file);
        }}
      />
    </>
  );
}
