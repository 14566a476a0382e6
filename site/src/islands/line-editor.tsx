import type { JSX, RefObject } from "preact";
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { LONGEST_CHART } from "../parts/chart-field.tsx";
import { tableFromHtml } from "../work/table-from-html.ts";

/** Height of a line of the field in CSS pixels; the style sheet has the same. */
const LINE = 24;

interface LineEditorProps {
  readonly id: string;
  readonly label: string;
  readonly hint: string;
  readonly value: string;
  /** The worst thing told about each line. */
  readonly marks: ReadonlyMap<number, "error" | "warning">;
  readonly isWrong: boolean;
  readonly field: RefObject<HTMLTextAreaElement>;
  readonly onInput: (text: string) => void;
  readonly onReplace: (text: string) => void;
}

/**
 * The text of a chart with numbered lines, those marked that something is said about. Only the numbers in
 * sight are there, so that ten thousand lines are as light as ten.
 */
export function LineEditor(props: LineEditorProps): JSX.Element {
  const { id, label, hint, value, marks, isWrong, field, onInput, onReplace } = props;
  const [top, setTop] = useState(0);
  const [height, setHeight] = useState(16 * LINE);
  const gutter = useRef<HTMLDivElement>(null);
  const count = useMemo(() => value.split("\n").length, [value]);
  useEffect(() => {
    if (field.current === null) return;
    const observer = new ResizeObserver(() => setHeight(field.current?.clientHeight ?? 0));
    observer.observe(field.current);
    return () => observer.disconnect();
  }, [field]);
  const first = Math.floor(top / LINE);
  const last = Math.min(count, first + Math.ceil(height / LINE) + 1);
  const numbers = Array.from({ length: Math.max(0, last - first) }, (_, index) => first + index + 1);
  return (
    <div class="field">
      <label class="label" for={id}>
        {label}
      </label>
      <p id={`${id}-hint`} class="hint">
        {hint}
      </p>
      <div class="editor">
        <div class="gutter" aria-hidden="true" ref={gutter}>
          <svg width="100%" height={height} aria-hidden="true">
            {numbers.map((number) => {
              const mark = marks.get(number);
              const y = (number - 1) * LINE - top + 8;
              return (
                <g key={number} class={mark === undefined ? "line" : `line ${mark}`}>
                  {mark === undefined ? null : <rect x="0" y={y} width="100%" height={LINE} />}
                  <text x="88%" y={y + 17}>
                    {number}
                  </text>
                </g>
              );
            })}
          </svg>
        </div>
        <textarea
          ref={field}
          id={id}
          value={value}
          rows={16}
          wrap="off"
          spellcheck={false}
          autocomplete="off"
          aria-invalid={isWrong}
          aria-describedby={`${id}-hint ${id}-told`}
          onInput={(event) => onInput(event.currentTarget.value)}
          onScroll={(event) => setTop(event.currentTarget.scrollTop)}
          onPaste={(event) => {
            const html = event.clipboardData?.getData("text/html").slice(0, LONGEST_CHART) ?? "";
            const table = tableFromHtml(html);
            if (table === undefined) return;
            event.preventDefault();
            const { selectionStart, selectionEnd } = event.currentTarget;
            onReplace(value.slice(0, selectionStart) + table + value.slice(selectionEnd));
          }}
          onDragOver={(event) => event.preventDefault()}
          onDrop={(event) => {
            const file = event.dataTransfer?.files[0];
            if (file === undefined || file.size > LONGEST_CHART) return;
            event.preventDefault();
            void file.text().then(onReplace);
          }}
        />
      </div>
    </div>
  );
}

/** Selects a line of a text field and brings it into sight. */
export function selectLine(field: HTMLTextAreaElement, line: number): void {
  const lines = field.value.split("\n");
  const begin = lines.slice(0, line - 1).reduce((sum, text) => sum + text.length + 1, 0);
  field.focus();
  field.setSelectionRange(begin, begin + (lines[line - 1]?.length ?? 0));
  field.scrollTop = Math.max(0, (line - 4) * LINE);
}
