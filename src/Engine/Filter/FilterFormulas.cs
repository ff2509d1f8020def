using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Filter;

/// <summary>The formulary's entries about biofilters.</summary>
public static class FilterFormulas
{
    private const string Subject = "Filter";

    private const string RateError = "The span of the removal rate: published values for passive media differ tenfold.";

    private const string RateNotFor =
        "A filter younger than about two months, or short of oxygen; media finer than about 1000 m²/m³, whose surface does far less.";

    public static readonly Formula FilterArea = new()
    {
        Id = "filter-area",
        Name = "Biofilter surface, ammonia as NH3",
        Subject = Subject,
        Equation = "A = L / r",
        Inputs =
        [
            new("ammonia", "Ammonia to be nitrified", Units.GramAmmoniaPerDay, 0, 1e6),
            new("rate", "Removal rate", Units.GramAmmoniaPerSquareMetreDay, 0.02, 4, 0.57,
                "from memory: FAO Technical Paper 589, appendix 4, which gives 0.2 to 2 and calls 0.57 careful"),
        ],
        Output = new("area", "Surface for nitrifying bacteria", Units.SquareMetre),
        Sources = [Literature.FaoAppendix4],
        Confidence = Confidence.Textbook,
        Error = RateError,
        NotFor = RateNotFor,
        Compute = x => Filter.FilterArea.Fao(x[0], x[1]),
    };

    public static readonly Formula FilterAreaNitrogen = new()
    {
        Id = "filter-area-nitrogen",
        Name = "Biofilter surface, ammonia as nitrogen",
        Subject = Subject,
        Equation = "A = L / r",
        Inputs =
        [
            new("nitrogen", "Total ammonia nitrogen to be nitrified", Units.GramNitrogenPerDay, 0, 1e6),
            new("rate", "Removal rate", Units.GramNitrogenPerSquareMetreDay, 0.02, 4, 0.47,
                "0.57 g NH3/m²/d counted as nitrogen (from memory: FAO Technical Paper 589, appendix 4)"),
        ],
        Output = new("area", "Surface for nitrifying bacteria", Units.SquareMetre),
        Sources = [Literature.Miller],
        Confidence = Confidence.PublishedExample,
        Error = RateError,
        NotFor = RateNotFor,
        Compute = x => Filter.FilterArea.FromNitrogen(x[0], x[1]),
    };

    public static readonly Formula MediaForArea = new()
    {
        Id = "media-for-area",
        Name = "Media volume for a surface",
        Subject = Subject,
        Equation = "V = A / s",
        Inputs =
        [
            new("area", "Surface for nitrifying bacteria", Units.SquareMetre, 0, 1e6),
            new("specific-surface", "Surface in each bulk volume of the medium", Units.SquareMetrePerCubicMetre, 30, 1000),
        ],
        Output = new("volume", "Bulk volume of the medium", Units.Litre),
        Sources = [Literature.Miller, Literature.FaoAppendix4, Literature.Harwanto],
        Confidence = Confidence.PublishedExample,
        Error = "None in the geometry; surfaces printed for one kind of medium differ by a third.",
        NotFor = "Sand and other media finer than about 1000 m²/m³: their surface clogs and may not be counted in full.",
        Compute = x => MediaVolume.ForArea(x[0], x[1]),
    };

    public static readonly Formula NitrificationTemperatureFactor = new()
    {
        Id = "nitrification-temperature-factor",
        Name = "Temperature factor of nitrification",
        Subject = Subject,
        Equation = "f = θ^(t - 20)",
        Inputs =
        [
            new("temperature", "Water temperature", Units.Celsius, 10, 34),
            new("theta", "Ratio for each °C", Units.One, 1.01, 1.10, 1.04,
                "our choice: biofilms give 1.01 to 1.06, free or starved bacteria to 1.10; near 1.043 of Zhu and Chen 2002"),
        ],
        Output = new("factor", "Removal rate as a ratio to that at 20 °C", Units.One),
        Sources =
        [
            new("Zhu and Chen 2002, fixed-film nitrification, 4.275 % for each °C where ammonia limits, 1.108 % where oxygen limits"),
            new("Nemeth and others 2023, Frontiers in Microbiology, 1114647: 1.024 to 1.026"),
            new("Salvetti and others 2006, moving-bed biofilm: 1.098 where ammonia limits, 1.058 where oxygen limits, inside the film"),
        ],
        Confidence = Confidence.Textbook,
        Error = "At 12 °C the factor is 0.47 to 0.92 over the published span of θ; 0.73 with 1.04.",
        NotFor = "Under 10 °C, where rates fall to half and less; a filter short of oxygen.",
        Compute = x => NitrificationTemperature.Theta(x[0], x[1]),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All { get; } = [FilterArea, FilterAreaNitrogen, MediaForArea, NitrificationTemperatureFactor];
}
