/** The first page. */
export const home = {
  title: "From a tape to a size that fits",
  description:
    "Tapewise turns tape readings of a back and hips into a pack size, and says how sure that is. It runs in your browser and sends nothing anywhere.",
  lead: "Two or three readings of a back, a maker's size chart, and the doubt that every tape leaves. Tapewise carries that doubt all the way to the size and tells you what it comes to.",
  begin: "Choose a size",
  figureTitle: "One back, four sizes",
  figureWords:
    "Wren read 40.3, 39.8 and 40.6 cm. Each bar is what one size of a chart covers; the red line is what her readings say, with the interval that holds her back in 95 of 100 such cases.",
  doorsTitle: "Where to go",
  fitterTitle: "You fit packs to people",
  fitterText: "Enter a customer's readings, compare packs, print a card to hand over.",
  fitterMore: "Look over a maker's chart before you trust it.",
  teacherTitle: "You teach with it",
  teacherText: "Every page is a small experiment with a tape: change a reading and watch what follows.",
  teacherMore: "Copy the link and the whole class starts from the same numbers.",
  developerTitle: "You build with it",
  developerText: "The same answers from a typed library and a command, with a reference of every function.",
  developerMore: "Read the documentation",
};
