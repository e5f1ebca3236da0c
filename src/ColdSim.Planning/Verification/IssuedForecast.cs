using ColdSim.Model.Weather;

namespace ColdSim.Planning.Verification;

/// <summary>A forecast as it was issued.</summary>
/// <param name="Name">What it is called, such as its file's name.</param>
/// <param name="Issued">When it was issued.</param>
/// <param name="Rows">Its rows in order of time.</param>
public sealed record IssuedForecast(string Name, DateTimeOffset Issued, IReadOnlyList<WeatherRow> Rows);

/// <summary>A forecast beside what was observed: its errors are forecast less observed.</summary>
/// <param name="Forecast">The forecast.</param>
/// <param name="Hours">How many of its rows there is an observation for.</param>
/// <param name="Bias_K">Mean error of its air temperature: above zero it was too warm. [K]</param>
/// <param name="Rms_K">Root of the mean square of that error. [K]</param>
/// <param name="Largest_K">The error that is furthest from zero. [K]</param>
/// <param name="LargestAt">When that was.</param>
public sealed record VerifiedForecast(IssuedForecast Forecast, int Hours, double Bias_K, double Rms_K, double Largest_K, DateTimeOffset LargestAt);

/// <summary>The errors of all forecasts so many days ahead.</summary>
/// <param name="Day">1 for the first 24 hours after issue.</param>
/// <param name="Forecasts">How many forecasts reach there.</param>
/// <param name="Hours">How many of their rows there is an observation for.</param>
/// <param name="Bias_K">Mean error: above zero they are too warm. [K]</param>
/// <param name="Spread_K">Standard deviation of the errors about the bias. [K]</param>
/// <param name="Rms_K">Root of their mean square, the bias included. [K]</param>
/// <param name="SixHours">Correlation of an error with the same forecast's error six hours later; null where there are too few such pairs.</param>
public sealed record LeadErrors(int Day, int Forecasts, int Hours, double Bias_K, double Spread_K, double Rms_K, double? SixHours);
