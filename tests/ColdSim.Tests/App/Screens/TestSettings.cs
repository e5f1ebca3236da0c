using System.Runtime.CompilerServices;

namespace ColdSim.Tests.App.Screens;

internal static class TestSettings
{
    /// <summary>A missing snapshot fails everywhere, and no test reads or writes the real terminal.</summary>
    [ModuleInitializer]
    internal static void Set()
    {
        Environment.SetEnvironmentVariable("SNAPSHOOTER_STRICT_MODE", "on");
        Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");
    }
}
