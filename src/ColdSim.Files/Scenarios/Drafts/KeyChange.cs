namespace ColdSim.Files.Scenarios.Drafts;

/// <summary>A key of a scenario with another value.</summary>
/// <param name="Key">Its whole name, such as <c>thermostat.night</c> or <c>cylinder.2.left</c>; of a list the number of the table from 1.</param>
/// <param name="Value">As TOML writes it: <c>"30 lb"</c> with its quotes, <c>3</c>, <c>["22:00-06:00"]</c>.</param>
public sealed record KeyChange(string Key, string Value);
