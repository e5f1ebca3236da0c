using System.Runtime.CompilerServices;

namespace ColdSim.Tests.App.Screens;

internal static class TestSettings
{
    private const string StrictMode = "SNAPSHOOTER_STRICT_MODE";

    /// <summary>A missing snapshot fails everywhere unless the environment turns that off to write one; no test touches the real terminal.</summary>
    [ModuleInitializer]
    internal static void Set()
    {
        if (Environment.GetEnvironmentVariable(StrictMode) is null)
            Environment.SetEnvironmentVariable(StrictMode, "on");
        Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");
    }
}
