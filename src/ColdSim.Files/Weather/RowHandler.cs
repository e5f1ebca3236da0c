using ColdSim.Model.Weather;

namespace ColdSim.Files.Weather;

/// <summary>Takes a row from the stage before.</summary>
internal delegate void RowHandler(in WeatherRow row);
