package longrun.pressure;

import longrun.plan.choice.Named;

/** Whether an appliance gets the pressure its label asks for. */
public enum InletStatus implements Named {
    ENOUGH,
    /** Under the label's least with everything firing. */
    LOW,
    /** Over the label's greatest with nothing firing. */
    HIGH,
    /** A figure of the label or of the pipe is missing. */
    UNKNOWN
}
