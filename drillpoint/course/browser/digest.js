// SHA-256 and the one way of writing a hand-in's content that it is taken of. The browser's own is refused to pages that
// were opened from a folder in some browsers, so a page on a stick brings its own.

const primes = (() => {
  const found = [];
  for (let n = 2; found.length < 64; n += 1) if (found.every((p) => n % p)) found.push(n);
  return found;
})();
const fraction = (x) => Math.floor((x - Math.floor(x)) * 2 ** 32) | 0;
// FIPS 180-4: the first 32 bits of the fractional parts of cube and square roots of the first primes.
const ROUND = primes.map((p) => fraction(Math.cbrt(p)));
const START = primes.slice(0, 8).map((p) => fraction(Math.sqrt(p)));

function sha256(ascii) {
  const length = ascii.length;
  const words = new Int32Array((((length + 8) >> 6) + 1) * 16);
  for (let i = 0; i < length; i += 1) words[i >> 2] |= ascii.charCodeAt(i) << (24 - 8 * (i & 3));
  words[length >> 2] |= 0x80 << (24 - 8 * (length & 3));
  words[words.length - 1] = length * 8;
  const turn = (x, n) => (x >>> n) | (x << (32 - n));
  const hash = [...START];
  const w = new Int32Array(64);
  for (let block = 0; block < words.length; block += 16) {
    let [a, b, c, d, e, f, g, h] = hash;
    for (let i = 0; i < 64; i += 1) {
      if (i < 16) w[i] = words[block + i];
      else {
        const [x, y] = [w[i - 15], w[i - 2]];
        w[i] = w[i - 16] + (turn(x, 7) ^ turn(x, 18) ^ (x >>> 3)) + w[i - 7] + (turn(y, 17) ^ turn(y, 19) ^ (y >>> 10));
      }
      const one = (h + (turn(e, 6) ^ turn(e, 11) ^ turn(e, 25)) + ((e & f) ^ (~e & g)) + ROUND[i] + w[i]) | 0;
      const two = ((turn(a, 2) ^ turn(a, 13) ^ turn(a, 22)) + ((a & b) ^ (a & c) ^ (b & c))) | 0;
      [h, g, f, e, d, c, b, a] = [g, f, e, (d + one) | 0, c, b, a, (one + two) | 0];
    }
    [a, b, c, d, e, f, g, h].forEach((x, i) => { hash[i] = (hash[i] + x) | 0; });
  }
  return hash.map((x) => (x >>> 0).toString(16).padStart(8, "0")).join("");
}

// JSON in plain ASCII, as Python writes it.
const ascii = (json) => json.replace(/[^ -~\n]/g, (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, "0")}`);

function inOneOrder(value) {
  if (Array.isArray(value)) return value.map(inOneOrder);
  if (value === null || typeof value !== "object") return value;
  return Object.fromEntries(Object.keys(value).sort().map((key) => [key, inOneOrder(value[key])]));
}

// The digest of a hand-in: of everything in it but the digest itself.
function digestOf({ digest, ...rest }) {
  return sha256(ascii(JSON.stringify(inOneOrder(rest))));
}
const shortDigest = (digest) => `${digest.slice(0, 4)}-${digest.slice(4, 8)}`.toUpperCase();
