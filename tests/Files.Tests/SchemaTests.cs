using System.Globalization;
using System.Text.Json.Nodes;
using Json.Schema;
using YamlDotNet.RepresentationModel;

namespace Runnel.Files.Tests;

/// <summary>The schema and the page about the format come from the plan's own description. RUNNEL_WRITE_DOCS=1 writes them anew.</summary>
public class SchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(PlanSchema.Json());

    [Theory]
    [InlineData("docs/plan.schema.json")]
    [InlineData("docs/plan-format.md")]
    public void The_committed_file_is_what_the_description_gives(string file)
    {
        var text = file.EndsWith(".json", StringComparison.Ordinal) ? PlanSchema.Json() : PlanFormatPage.Markdown();
        var path = Path.Combine(Samples.Root, file);
        if (Environment.GetEnvironmentVariable("RUNNEL_WRITE_DOCS") == "1")
        {
            File.WriteAllText(path, text);
        }
        Assert.Equal(text, File.ReadAllText(path));
    }

    [Fact]
    public void The_schema_accepts_every_plan_that_is_right()
    {
        foreach (var path in Samples.Plans.Where(p => PlanFile.Read(p).Plan is not null))
        {
            Assert.True(Accepts(File.ReadAllText(path)), path);
        }
        Assert.True(Accepts(PlanFormatPage.Example));
        Assert.True(Accepts(PlanWriter.Write(PlanFile.Parse(Samples.Cellar, "cellar.yaml").Plan!)));
    }

    [Theory]
    [InlineData("currency: EUR", "curency: EUR")]
    [InlineData("currency: EUR", "currency: euro")]
    [InlineData("setting: indoors", "setting: inside")]
    [InlineData("hours: 14\n", "hours: 25\n")]
    [InlineData("role: fish tank", "role: fish pond")]
    [InlineData("lid: yes", "lid: perhaps")]
    [InlineData("watts: 28 W, ", "")]
    [InlineData("spare money: 10 to 15 %", "spare money: [10, 15]")]
    public void The_schema_refuses_a_broken_plan(string right, string wrong)
    {
        Assert.Contains(right, Samples.Cellar, StringComparison.Ordinal);
        Assert.False(Accepts(Samples.Cellar.Replace(right, wrong, StringComparison.Ordinal)));
    }

    [Fact]
    public void The_schema_is_valid_by_its_own_standard() =>
        Assert.True(MetaSchemas.Draft202012.Evaluate(JsonNode.Parse(PlanSchema.Json())!.Deserialize()).IsValid);

    [Fact]
    public void The_example_on_the_page_is_a_plan() => Assert.Empty(PlanFile.Parse(PlanFormatPage.Example, "example.yaml").Errors);

    private static bool Accepts(string yaml)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(yaml));
        return Schema.Evaluate(Json(stream.Documents[0].RootNode)!.Deserialize()).IsValid;
    }

    private static JsonNode? Json(YamlNode node) => node switch
    {
        YamlMappingNode map => new JsonObject(map.Children.Select(c => KeyValuePair.Create(((YamlScalarNode)c.Key).Value!, Json(c.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Children.Select(Json)]),
        YamlScalarNode { Style: YamlDotNet.Core.ScalarStyle.Plain } plain when double.TryParse(plain.Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) => number,
        YamlScalarNode scalar => scalar.Value,
        _ => null,
    };
}

internal static class JsonNodes
{
    public static System.Text.Json.JsonElement Deserialize(this JsonNode node) => System.Text.Json.JsonDocument.Parse(node.ToJsonString()).RootElement;
}
