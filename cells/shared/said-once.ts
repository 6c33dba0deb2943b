import type { Scenario } from '#src/notebook/types.ts';

export interface Remarks {
  readonly scenarios: readonly Scenario[];
  readonly remarks: readonly string[];
}

/** What several scenarios have in common is said once, of all of them; in the order in which it first came up. */
export function saidOnce(
  each: readonly { readonly scenario: Scenario; readonly remarks: readonly string[] }[],
): readonly Remarks[] {
  const whose = new Map<string, Scenario[]>();
  for (const { scenario, remarks } of each)
    for (const remark of remarks) whose.set(remark, [...(whose.get(remark) ?? []), scenario]);
  const groups = new Map<string, { scenarios: readonly Scenario[]; remarks: string[] }>();
  for (const [remark, scenarios] of whose) {
    const ids = scenarios.map(({ id }) => id).join('/');
    const group = groups.get(ids);
    if (group) group.remarks.push(remark);
    else groups.set(ids, { scenarios, remarks: [remark] });
  }
  return [...groups.values()];
}
