import { useRef, type ReactElement, type ReactNode } from 'react';

interface FileButtonProps {
  readonly className?: string;
  readonly onFiles: (files: readonly File[]) => void;
  /** One file is asked for. */
  readonly isSingle?: boolean;
  /** Kinds of file; left out: those of briefs. */
  readonly accept?: string;
  readonly children: ReactNode;
}

const YAML = '.yaml,.yml,text/yaml,text/plain';

/** A button that asks for files. */
export function FileButton({
  className,
  onFiles,
  isSingle = false,
  accept = YAML,
  children,
}: FileButtonProps): ReactElement {
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
        multiple={!isSingle}
        accept={accept}
        onChange={(event) => {
          const files = [...(event.target.files ?? [])];
          event.target.value = '';
          if (files.length > 0) onFiles(files);
        }}
      />
    </>
  );
}
