namespace Slowglow.Sheets.Devices;

public enum DeviceKind
{
    Triode,
    Pentode,
    RectifierValve,
    Diode,
    Zener,
    Led,
    Bjt,
    Jfet,
    Mosfet,
    OpAmp,
    Regulator,
    GasRegulator,
    Optocoupler,
    Darlington,
}
