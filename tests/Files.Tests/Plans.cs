namespace Runnel.Files.Tests;

/// <summary>Short invented plans to which a test adds what it is about.</summary>
internal static class Plans
{
    /// <summary>Nine lines that are right; what is added begins in line 10.</summary>
    public const string Small = """
        runnel: 1
        name: Test loop
        currency: EUR
        place: {setting: indoors}
        vessels:
          tank: {role: fish tank, shape: box 90 x 45 x 45 cm}
          bed: {role: media bed, shape: box 80 x 40 x 30 cm}
        pumps:
          pump: {watts: 8 W}

        """;

    public static string With(string more) => Small.ReplaceLineEndings("\n") + more;
}
