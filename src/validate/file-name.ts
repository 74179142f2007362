/** File names that a session may use. Only the text is looked at; whether the file is there is for cli/ to see. */

/** Why a name may not be used, or undefined when it may: a bare or nested path inside the folder it is meant for. */
export function fileNameFault(name: string): string | undefined {
  if (name === "" || name.length > 200) return "the name is empty or too long";
  if (/[\p{Cc}\p{Cf}]/u.test(name)) return "the name holds a character that cannot be seen";
  if (/^([/\\~]|[A-Za-z]:)/.test(name) || name.includes("://")) return "the name starts outside the folder";
  if (name.includes("\\")) return "folders are separated by / on every machine";
  const steps = name.split("/");
  if (steps.includes("..")) return "the name leads out of the folder";
  if (steps.some((s) => s === "" || s === "." || s.startsWith(".") || s.trim() !== s))
    return "the name is not a plain path";
  if (/[<>:"|?*]/.test(name)) return "the name holds a sign that not every machine allows";
  return undefined;
}
