package careless.modules.one;

import careless.modules.two.Two;

/** Uses another module all the same. */
record One(Two two) {}
