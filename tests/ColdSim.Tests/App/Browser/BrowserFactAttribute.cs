using Xunit;

namespace ColdSim.Tests.App.Browser;

/// <summary>A test in a real browser, which is skipped with a word where there is none; <c>.ci/run</c> installs one.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class BrowserFactAttribute : FactAttribute
{
    public BrowserFactAttribute() => Skip = Chromium.Why;
}

/// <summary>The same of a test with several cases.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class BrowserTheoryAttribute : TheoryAttribute
{
    public BrowserTheoryAttribute() => Skip = Chromium.Why;
}
