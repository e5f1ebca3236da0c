namespace ColdSim.Planning.Actions;

/// <summary>Something that a person can do so that the nights hold, in the order in which it is proposed: the least intrusive first.</summary>
public enum ActionKind
{
    /// <summary>Covers over the windows by day as well.</summary>
    WindowCovers,

    /// <summary>Another cylinder first.</summary>
    CylinderFirst,

    /// <summary>All cylinders open together.</summary>
    BothOpen,

    /// <summary>The panels swept of snow.</summary>
    PanelsClear,

    /// <summary>A gas appliance off.</summary>
    ApplianceOff,

    /// <summary>A load of the 12 V side off.</summary>
    LoadOff,

    /// <summary>The generator off, so that its gas is saved.</summary>
    GeneratorOff,

    /// <summary>The generator allowed at any hour.</summary>
    GeneratorAnyHour,

    /// <summary>A heater beside the furnace allowed at any hour.</summary>
    OtherHeater,

    /// <summary>A lower set point at night. [K]</summary>
    NightSetPoint,

    /// <summary>A lower set point by day. [K]</summary>
    DaySetPoint,

    /// <summary>So much more gas in every cylinder, up to its legal filling. [kg]</summary>
    TopUp,

    /// <summary>A listed blanket on every cylinder. [W]</summary>
    Blanket,

    /// <summary>Propane alone in place of a mixed gas, the same mass of it, up to the legal filling.</summary>
    PurePropane,

    /// <summary>A second full cylinder of the same size on an automatic changeover.</summary>
    SecondChangeover,

    /// <summary>A second full cylinder of the same size, both open.</summary>
    SecondOpen,

    /// <summary>Full cylinders of a larger size in place of those there are; the water that one holds. [m³]</summary>
    Size,

    /// <summary>A place with a hookup.</summary>
    ShorePower,

    /// <summary>Panels beside those there are, clear of snow. [W]</summary>
    MorePanels,

    /// <summary>A larger bank of the same kind; its rated charge. [J]</summary>
    Battery,

    /// <summary>A generator on the same cylinders. [W]</summary>
    Generator,

    /// <summary>A larger regulator, fitted by a technician; its rated flow. [W]</summary>
    Regulator,
}

/// <summary>What is common to kinds of action.</summary>
internal static class ActionKinds
{
    /// <summary>Whether it needs only what is on board.</summary>
    public static bool IsOnBoard(this ActionKind kind) => kind < ActionKind.TopUp;
}
