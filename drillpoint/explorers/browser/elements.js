// Small pieces of page.

const SVG = "http://www.w3.org/2000/svg";

function make(tag, attributes = {}, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(...children);
  return element;
}

// Every explorer on a page runs its own copy of this script, so counting alone would name two things alike.
const ownCopy = Math.random().toString(36).slice(2, 10);
let named = 0;

function ownName(what) {
  return `drillpoint-${what}-${ownCopy}-${(named += 1)}`;
}

function makeSvg(tag, attributes = {}) {
  const element = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  return element;
}

function setText(element, text) {
  if (element.textContent !== text) element.textContent = text;
}

function setAttribute(element, name, value) {
  if (element.getAttribute(name) !== value) element.setAttribute(name, value);
}

// "α_f" as an α with a small f below the line.
function lowered(text) {
  return text.split(/_([\p{L}\p{N}]+)/u).map((piece, i) => (i % 2 ? make("sub", {}, piece) : piece));
}

function makeSymbol(symbol) {
  return make("i", {}, ...lowered(symbol));
}

function makeFormula(text) {
  return make("span", {}, ...lowered(text));
}

function setFormula(element, text) {
  if (element.dataset.text === text) return;
  element.dataset.text = text;
  element.replaceChildren(...lowered(text));
}
