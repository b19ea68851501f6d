// The modules of a QR code: marks for the reader, then data in a zigzag, then the mask that is easiest to read.

/** Which modules each mask turns over, after table 10 of the standard. */
const MASKS = [
  (x, y) => (x + y) % 2,
  (x, y) => y % 2,
  (x) => x % 3,
  (x, y) => (x + y) % 3,
  (x, y) => (Math.floor(x / 3) + Math.floor(y / 2)) % 2,
  (x, y) => ((x * y) % 2) + ((x * y) % 3),
  (x, y) => (((x * y) % 2) + ((x * y) % 3)) % 2,
  (x, y) => (((x + y) % 2) + ((x * y) % 3)) % 2,
];

/** Dark and light as in a finder, with four light modules on one side: whatever looks like it costs. */
const FINDER_LIKE = ["10111010000", "00001011101"];

export class Grid {
  constructor(version) {
    this.version = version;
    this.side = 17 + 4 * version;
    this.modules = new Uint8Array(this.side ** 2);
    this.taken = new Uint8Array(this.side ** 2);
    this.marks();
  }

  dark(x, y) {
    return this.modules[y * this.side + x] === 1;
  }

  /** Lays the bytes into all places that are free, two columns at a time, up and down. */
  fill(bytes) {
    let at = 0;
    for (let right = this.side - 1; right > 0; right -= 2) {
      if (right === 6) right = 5;
      const up = ((right + 1) & 2) === 0;
      for (let step = 0; step < this.side; step += 1) {
        const y = up ? this.side - 1 - step : step;
        for (const x of [right, right - 1]) {
          const place = y * this.side + x;
          if (this.taken[place]) continue;
          this.modules[place] = (bytes[at >> 3] >> (7 - (at & 7))) & 1;
          at += 1;
        }
      }
    }
  }

  /** The grid under the mask with the lowest cost. */
  best(level) {
    const costs = MASKS.map((_, mask) => {
      this.turn(mask, level);
      const cost = this.cost();
      this.turn(mask, level);
      return cost;
    });
    this.turn(costs.indexOf(Math.min(...costs)), level);
    return this;
  }

  /** Turns the data over by a mask and says which; the same again turns it back. */
  turn(mask, { bits }) {
    for (let y = 0; y < this.side; y += 1) {
      for (let x = 0; x < this.side; x += 1) {
        const place = y * this.side + x;
        if (!this.taken[place] && MASKS[mask](x, y) === 0) this.modules[place] ^= 1;
      }
    }
    this.format(withCheck((bits << 3) | mask, 10, 0x537) ^ 0x5412);
  }

  set(x, y, dark) {
    if (x < 0 || y < 0 || x >= this.side || y >= this.side) return;
    this.modules[y * this.side + x] = dark ? 1 : 0;
    this.taken[y * this.side + x] = 1;
  }

  marks() {
    const last = this.side - 1;
    for (let at = 0; at <= last; at += 1) {
      this.set(6, at, at % 2 === 0);
      this.set(at, 6, at % 2 === 0);
    }
    for (const [x, y] of [[3, 3], [last - 3, 3], [3, last - 3]]) this.rings(x, y, 4, [2, 4]);
    const places = this.alignment();
    for (const x of places) {
      for (const y of places) {
        const finder = (x === 6 && y === 6) || (x === 6 && y === last - 6) || (x === last - 6 && y === 6);
        if (!finder) this.rings(x, y, 2, [1]);
      }
    }
    this.format(0);
    if (this.version >= 7) this.number(withCheck(this.version, 12, 0x1f25));
  }

  /** Square rings around a middle, all dark but the named ones. */
  rings(x, y, reach, light) {
    for (let down = -reach; down <= reach; down += 1) {
      for (let across = -reach; across <= reach; across += 1) {
        this.set(x + across, y + down, !light.includes(Math.max(Math.abs(across), Math.abs(down))));
      }
    }
  }

  /** Rows and columns of the alignment marks. */
  alignment() {
    if (this.version === 1) return [];
    const count = Math.floor(this.version / 7) + 2;
    const step = Math.ceil((this.version * 4 + 4) / (count * 2 - 2)) * 2;
    return [6, ...Array.from({ length: count - 1 }, (_, at) => this.side - 7 - at * step)];
  }

  /** Level and mask, twice. */
  format(bits) {
    const bit = (at) => (bits >> at) & 1;
    for (let at = 0; at < 15; at += 1) {
      if (at < 8) this.set(8, at < 6 ? at : at + 1, bit(at));
      else this.set(at === 8 ? 7 : 14 - at, 8, bit(at));
      if (at < 8) this.set(this.side - 1 - at, 8, bit(at));
      else this.set(8, this.side - 15 + at, bit(at));
    }
    this.set(8, this.side - 8, true);
  }

  /** The version, twice. */
  number(bits) {
    for (let at = 0; at < 18; at += 1) {
      const [far, near] = [this.side - 11 + (at % 3), Math.floor(at / 3)];
      this.set(far, near, (bits >> at) & 1);
      this.set(near, far, (bits >> at) & 1);
    }
  }

  /** What makes it hard to read, counted as in the standard: long runs, blocks, what looks like a finder, imbalance. */
  cost() {
    let cost = 0;
    let dark = 0;
    for (let line = 0; line < this.side; line += 1) {
      for (const across of [true, false]) {
        let text = "";
        for (let at = 0; at < this.side; at += 1) text += across ? this.modules[line * this.side + at] : this.modules[at * this.side + line];
        for (const run of text.match(/0{5,}|1{5,}/g) ?? []) cost += run.length - 2;
        for (const like of FINDER_LIKE) {
          for (let at = text.indexOf(like); at >= 0; at = text.indexOf(like, at + 1)) cost += 40;
        }
        if (across) dark += text.split("1").length - 1;
      }
    }
    for (let place = 0; place < this.side * (this.side - 1); place += 1) {
      if (place % this.side === this.side - 1) continue;
      const sum = this.modules[place] + this.modules[place + 1] + this.modules[place + this.side] + this.modules[place + this.side + 1];
      if (sum % 4 === 0) cost += 3;
    }
    return cost + 10 * Math.floor(Math.abs((dark * 20) / this.side ** 2 - 10));
  }
}

/** A number with its check behind it: the remainder by a polynomial. */
function withCheck(number, length, polynomial) {
  let rest = number;
  for (let at = 0; at < length; at += 1) rest = (rest << 1) ^ ((rest >> (length - 1)) * polynomial);
  return (number << length) | rest;
}
