// Asking Python for what no formula gives: one question at a time, always for the newest drill.

const PATIENCE = 8000; // ms without an answer before the learner is told

// send(question): to Python. answered(answer), silent(): what is done then.
function makeAsking(send, answered, silent) {
  // A widget may be shown twice; each view knows its own questions.
  const view = Math.random().toString(36).slice(2);
  let [count, asked, waiting, newest, timer] = [0, "", false, null, 0];

  function ask(question) {
    newest = question;
    if (!waiting) next();
  }
  function next() {
    if (!newest) return;
    waiting = true;
    asked = `${view}-${(count += 1)}`;
    send({ ...newest, asked });
    newest = null;
    clearTimeout(timer);
    timer = setTimeout(() => {
      waiting = false; // so that the next move asks again
      silent();
    }, PATIENCE);
  }
  function answer(message) {
    if (message.asked !== asked) return; // of a question given up on
    clearTimeout(timer);
    waiting = false;
    // While another question is on its way, this answer is still newer than what is on the screen.
    answered(message);
    next();
  }
  return { ask, answer, close: () => clearTimeout(timer) };
}
