// What can be seen stays the same while several rules look at a page in one go.
const seenBefore = new Map();
const lookAt = isSeen;
isSeen = element => {
  if (!seenBefore.has(element)) { seenBefore.set(element, lookAt(element)); }
  return seenBefore.get(element);
};
