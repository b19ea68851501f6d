// Changes of a house file. Each gives a new one; what was typed stays as it was typed.
import { sketch } from "../sketch.js";

/** The rooms that every house has, to be filled in. */
export function begin() {
  return sketch({ rooms: ["living", "kitchen", "main-bedroom", "bathroom"].map((kind) => ({ kind })) });
}

export function choose(file, choice, id) {
  return inside(file, (house) => ({ ...house, choices: { ...house.choices, [choice]: id } }));
}

/** A room more; it lies on the storey of the one before. */
export function add(file, kind) {
  return inside(file, (house) => {
    const room = { id: house.next_room, kind, name: "", storey: house.rooms.at(-1)?.storey ?? 0, entries: [] };
    return { ...house, rooms: [...house.rooms, room], next_room: house.next_room + 1 };
  });
}

export function remove(file, id) {
  return inside(file, (house) => ({ ...house, rooms: house.rooms.filter((room) => room.id !== id) }));
}

/** A room as it was and where it was, unless its number means another room by now. */
export function putBack(file, before, id) {
  const at = before.house.rooms.findIndex((room) => room.id === id);
  return inside(file, (house) => {
    const taken = id >= house.next_room || house.rooms.some((room) => room.id === id);
    return taken ? house : { ...house, rooms: house.rooms.toSpliced(at, 0, before.house.rooms[at]) };
  });
}

export function become(file, id, kind) {
  return room(file, id, (room) => ({ ...room, kind }));
}

/** Types into a field of a room; an empty text is no entry. */
export function type(file, id, field, text, unit) {
  return room(file, id, (room) => {
    const at = room.entries.findIndex((entry) => entry.field === field);
    const rest = room.entries.filter((entry) => entry.field !== field);
    const entry = text.trim() === "" ? [] : [{ field, text, unit }];
    return { ...room, entries: rest.toSpliced(at < 0 ? rest.length : at, 0, ...entry) };
  });
}

/** What was typed into a field of a room. */
export function entry(room, field) {
  return room.entries.find((entry) => entry.field === field);
}

function room(file, id, change) {
  return inside(file, (house) => ({ ...house, rooms: house.rooms.map((room) => (room.id === id ? change(room) : room)) }));
}

function inside(file, change) {
  return { ...file, house: change(file.house) };
}
