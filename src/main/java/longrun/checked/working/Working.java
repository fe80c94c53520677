package longrun.checked.working;

import longrun.checked.published.Given;

/** A kind of computation a published case asks for. */
@FunctionalInterface
interface Working {

    Answer of(Given given);
}
