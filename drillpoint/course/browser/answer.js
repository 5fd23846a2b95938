// How an answer will be read, in the words of its box: {echo}, {refused: why}, or {later: true} when only marking can tell.

function answerReader(table) {
  const readNumber = numberReader(table);
  // Signs that the two languages class in different ways are left to the marking.
  const ODD = /[^\P{C}\r\n\t]|[\p{Zl}\p{Zp}\u1680\u2000-\u200a\u205f\u3000\ufeff]/u;
  const PLAIN = /[\u2007\u2009]/gu;

  function read(typed, form) {
    if (ODD.test(typed.replace(PLAIN, " "))) return { later: true };
    if (form.kind === "number") return readNumber(typed, form.unit);
    if (form.kind === "judgement") return readJudgement(typed, form.unit);
    if (form.kind === "choice") return readLetter(typed, form.letters);
    if (form.kind === "text") return readProse(typed);
    return { later: true };
  }
  function readJudgement(typed, unit) {
    const found = /^[\s]*([yY][eE][sS]|[nN][oO]|[yY]|[nN])(?![\p{L}\p{N}])[\s,;:]*/u.exec(typed);
    if (!found) return { refused: "Begin with yes or no, then give the number." };
    const number = readNumber(typed.slice(found[0].length), unit);
    if (number.refused) return number;
    const yes = "yY".includes(found[1][0]);
    return { ...number, yes, echo: `${yes ? "yes" : "no"}; ${number.echo}` };
  }
  function readLetter(typed, letters) {
    const found = typed.length <= table.longest && /^\s*\(?([A-Za-z])[).]?\s*$/.exec(typed);
    const letter = found ? found[1].toLowerCase() : "";
    return letter && letters.includes(letter) ? { echo: letter } : { refused: `One letter is expected: ${[...letters].join(", ")}.` };
  }
  function readProse(typed) {
    if ([...typed].length > table.longest_prose) return { refused: `This is longer than ${table.longest_prose} characters.` };
    const words = typed.split(/\s+/).filter(Boolean).length;
    return words ? { echo: `${words} word${words === 1 ? "" : "s"}` } : { refused: "Nothing was written." };
  }
  return read;
}
