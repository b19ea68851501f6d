// The states that screenshots are taken of. A state is a name and the steps of a person to reach it.
export const states = [
  {
    name: "start",
    steps: async (person) => person.opens(),
  },
];
