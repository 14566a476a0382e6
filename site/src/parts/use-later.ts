import { useEffect, useState } from "preact/hooks";

/**
 * The value, but in a task of its own: what is shown of it does not hold up what somebody types. Of values that
 * come in quick succession only the last one is taken.
 */
export function useLater<Value>(value: Value, delayMs: number): Value {
  const [later, setLater] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setLater(() => value), delayMs);
    return () => clearTimeout(timer);
  }, [value, delayMs]);
  return later;
}
