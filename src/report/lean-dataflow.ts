/**
 * A dataflow without the operators whose outcome nobody reads: a figure is drawn once, as text, and no page is repainted,
 * nothing is hovered over. Half of what Vega would run for a figure goes. The scene, and so the drawing, stays the same.
 */
import type { Dataflow } from "./structures.js";

interface Operator {
  readonly id: number | string;
  readonly type: string;
  readonly params?: { readonly [name: string]: unknown; readonly pulse?: Reference; readonly mark?: Reference };
  /** What runs after it. */
  readonly parent?: Reference;
  readonly data?: Readonly<Record<string, readonly string[]>>;
}
interface Reference {
  readonly $ref: number | string;
}

export function lean(dataflow: Dataflow): Dataflow {
  const operators = dataflow.operators as readonly Operator[];
  const roles = new Map(operators.map(({ id, params }) => [id, roleOf(params?.markdef)]));
  const unread = ({ type, params }: Operator): boolean =>
    type === "render" ||
    type === "sieve" ||
    (type === "bound" && !LAID_OUT.test(roles.get(params?.mark?.$ref ?? "") ?? ""));
  // From the end: what follows an operator goes before it does.
  return {
    ...dataflow,
    operators: operators.map(({ id }) => id).reduceRight((left, id) => without(left, id, unread), operators),
  };
}

/** Only axes are laid out by the room their parts take. */
const LAID_OUT = /^axis(?:-tick|-label|-title)?$/;

const roleOf = (markdef: unknown): string => (markdef as { readonly role?: string } | undefined)?.role ?? "";

/** Without an operator that passes on what it is given: what ran after it runs after what came before it. */
function without(
  operators: readonly Operator[],
  id: Operator["id"],
  unread: (one: Operator) => boolean,
): readonly Operator[] {
  const one = operators.find((each) => each.id === id);
  const source = one?.params?.pulse?.$ref;
  if (one === undefined || source === undefined || !unread(one)) return operators;
  const others = operators.filter((each) => each !== one);
  if (JSON.stringify(others).includes(`"$ref":${JSON.stringify(id)}}`)) return operators;
  const { parent } = one;
  return parent === undefined ? others : others.map((each) => (each.id === source ? { ...each, parent } : each));
}
