// Answers as records {task, typed, time}. The last one of a task counts; see hand_in_file.py, which does the same.

const KEPT_EARLIER = 3;

const lastAnswers = (records) => new Map(records.map((record) => [record.task, record]));

// The answers that count and were not taken back.
const given = (records) => new Map([...lastAnswers(records)].filter(([, record]) => record.typed));

function putAnswer(records, record) {
  const before = lastAnswers(records).get(record.task);
  // A clock that was set back must not let an older answer count.
  const time = before && before.time > record.time ? before.time : record.time;
  return [...records.filter((one) => one !== before), { ...record, time }];
}

// Put two sittings together in the order of time, and say where they differ.
function putTogether(here, there) {
  const latest = new Map();
  for (const record of [...there, ...here]) {
    const key = JSON.stringify([record.task, record.typed]);
    if (!latest.has(key) || record.time > latest.get(key).time) latest.set(key, record);
  }
  const [own, theirs] = [lastAnswers(here), lastAnswers(there)];
  const mine = (record) => (own.get(record.task)?.typed === record.typed ? 1 : 0);
  const order = (a, b) => (a < b ? -1 : a > b ? 1 : 0);
  const records = [...latest.values()].sort(
    (a, b) => order(a.time, b.time) || mine(a) - mine(b) || order(a.typed, b.typed),
  );
  const counting = lastAnswers(records);
  const differences = [...own.values()]
    .filter((record) => theirs.has(record.task) && theirs.get(record.task).typed !== record.typed)
    .map(({ task, typed }) => {
      const counts = counting.get(task).typed;
      return { task, counts, earlier: typed === counts ? theirs.get(task).typed : typed };
    });
  const left = new Map();
  const kept = records.reverse().filter(({ task }) => {
    left.set(task, (left.get(task) ?? 0) + 1);
    return left.get(task) <= KEPT_EARLIER + 1;
  });
  return { records: kept.reverse(), differences };
}
