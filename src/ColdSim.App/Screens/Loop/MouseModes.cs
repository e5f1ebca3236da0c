namespace ColdSim.App.Screens.Loop;

/// <summary>What the terminal reports of the mouse.</summary>
/// <remarks>
/// The toolkit asks for every motion (1003), which takes a drag from the terminal. Here it is asked for nothing but the wheel as cursor keys (1007), so that a
/// drag selects text, or, when the person wants to click, for buttons and the wheel (1000) with coordinates in decimals (1006).
/// </remarks>
internal static class MouseModes
{
    /// <summary>Keeps how the terminal treats the wheel, and asks for it as cursor keys.</summary>
    public const string Begin = "\x1b[?1007s\x1b[?1007h";

    /// <summary>Gives the wheel back.</summary>
    public const string End = "\x1b[?1007r";

    private const string NoReports = "\x1b[?1003l\x1b[?1015l\x1b[?1006l\x1b[?1000l";

    /// <summary>What is sent to have buttons reported, or nothing.</summary>
    public static string Reports(bool on) => on ? NoReports + "\x1b[?1000h\x1b[?1006h" : NoReports;
}
