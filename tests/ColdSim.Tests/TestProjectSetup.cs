using System.Runtime.CompilerServices;

namespace ColdSim.Tests;

/// <summary>Set before any test of this project runs.</summary>
internal static class TestProjectSetup
{
    /// <summary>A snapshot that is missing fails instead of being written.</summary>
    [ModuleInitializer]
    internal static void SnapshotsAreStrict() => Environment.SetEnvironmentVariable("SNAPSHOOTER_STRICT_MODE", "on");
}
