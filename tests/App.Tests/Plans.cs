using Runnel.Catalogue;
using Runnel.Engine.Assess;
using Runnel.Files;

namespace Runnel.App.Tests;

/// <summary>Small invented plans for tests, and their assessment.</summary>
internal static class Plans
{
    /// <summary>A small loop that everything can be added to. Invented.</summary>
    public const string Base = """
        # invented
        runnel: 1
        name: test loop
        currency: USD
        place: {setting: indoors, air: 18 °C}
        vessels:
          tank: {role: fish tank, shape: box 100 cm x 100 cm x 100 cm, level: 80 cm, lid: yes}
          bed: {role: media bed, shape: box 200 cm x 100 cm x 30 cm, media: expanded clay, media depth: 30 cm}

        """;

    public static PlanFile File(string more, string start = Base)
    {
        var file = PlanFile.Parse(start + more, "test.yaml");
        Assert.True(file.Errors.Count == 0, string.Join('\n', file.Errors));
        return file;
    }

    public static Assessment Assess(string more, int draws = 0, string start = Base) => Assess(File(more, start), draws);

    public static Assessment Assess(PlanFile file, int draws = 0) => Assessor.Assess(file.Plan!, Shelves.Standard, draws: draws);

    public static IEnumerable<string> Examples => Directory.GetFiles(Path.Combine(HouseTests.Root, "examples"), "*.yaml").Order(StringComparer.Ordinal);
}
