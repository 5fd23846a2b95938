// The file that is handed in: made here, and opened again here to go on.

const LARGEST_FILE = 200000;
const FORMAT = { format: "drillpoint hand-in", format_version: 1 };
const KEYS = ["format", "format_version", "course", "set", "version", "student", "answers", "time", "digest"];

const now = () => `${new Date().toISOString().slice(0, 19)}Z`;

// The content of the file, and its text: the same bytes as Python writes.
function handInOf(sheet, records, time) {
  const place = new Map(sheet.tasks.map((task, number) => [task.id, number]));
  const counting = given(records);
  const answers = records
    .filter(({ task, typed }) => typed && counting.has(task) && place.has(task))
    .sort((a, b) => place.get(a.task) - place.get(b.task))
    .map(({ task, typed, time: when }) => ({ task, typed, time: when }));
  const { course, set, version, student } = sheet;
  const content = { ...FORMAT, course, set, version, student, answers, time };
  content.digest = digestOf(content);
  return { content, text: `${ascii(JSON.stringify(content, null, 1))}\n` };
}

function receiptOf(content, boxes) {
  const count = new Set(content.answers.map((answer) => answer.task)).size;
  return `${count} of ${boxes} answers, ${content.time}, code ${shortDigest(content.digest)}`;
}

// Read a file that anybody may have written: its content and whether it is intact, or why it is not of this sheet.
function readHandIn(text, sheet) {
  if (text.length > LARGEST_FILE) return { problem: "it is larger than 200 kB" };
  let content;
  try {
    content = JSON.parse(text.replace(/^\ufeff/, ""));
  } catch {
    return { problem: text.trim() ? "it is broken" : "it is empty" };
  }
  if (content?.format !== FORMAT.format) return { problem: "it is not a hand-in file" };
  if (content.format_version !== FORMAT.format_version) return { problem: "it was written by another version of this page" };
  const texts = ["course", "set", "student", "time", "digest"];
  const isRecord = (a) => a !== null && typeof a === "object" && ["task", "typed", "time"].every((key) => typeof a[key] === "string");
  const whole = KEYS.every((key) => key in content) && texts.every((key) => typeof content[key] === "string");
  if (!whole || !Array.isArray(content.answers) || !content.answers.every(isRecord)) return { problem: "something is missing in it" };
  if (content.student !== sheet.student) return { problem: `it is the file of ${content.student}, and this is the sheet of ${sheet.student}` };
  if (content.course !== sheet.course || content.set !== sheet.set) return { problem: `it belongs to the set ${content.set} of ${content.course}` };
  if (content.version !== sheet.version) return { problem: `it answers version ${content.version} of the set, and this sheet is version ${sheet.version}` };
  const boxes = new Set(sheet.tasks.map((task) => task.id));
  return { answers: content.answers.filter((a) => boxes.has(a.task)), intact: content.digest === digestOf(content) };
}
