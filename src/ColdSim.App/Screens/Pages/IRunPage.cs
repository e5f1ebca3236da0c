using ColdSim.Planning.Nights;

namespace ColdSim.App.Screens.Pages;

/// <summary>A page that decides of which run all pages speak.</summary>
internal interface IRunPage
{
    /// <summary>The run that is shown.</summary>
    RunReport Report { get; }
}
