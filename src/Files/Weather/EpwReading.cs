namespace Runnel.Files.Weather;

/// <summary>What came of reading a weather file: the weather, or everything that is wrong with the file.</summary>
/// <param name="File">The weather, or null if there is any error.</param>
/// <param name="Errors">All errors up to a bound, in the order of the file; the last says how many more there are.</param>
public sealed record EpwReading(EpwFile? File, IReadOnlyList<PlanError> Errors);
