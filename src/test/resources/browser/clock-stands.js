// The clock that a page reads shows the time that was put here, and no other.
Date.now = function () { return TIME; };
