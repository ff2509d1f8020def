using System.Text.Json;
using System.Text.RegularExpressions;

namespace Runnel.Host.Tests;

/// <summary>Exit codes, and what goes to which stream.</summary>
public sealed class ExitTests
{
    private const string Laundry = "examples/laundry-room.yaml";

    private const string ThreeErrors = """
        runnel: 1
        name: Three errors
        currency: EUR
        place: {setting: indoors, latitude: 50, longitude: 5, elevation: 10 m}
        vessels:
          tank: {role: fish tank, shape: tote 600 L, level: 45 kg}
        pumps:
          pump: {wats: 20 W}
        heaters:
          heater: {watts: 200 kWh, keep: 20 C}
        """;

    [Fact]
    public async Task A_plan_that_is_read_gives_0_and_nothing_on_standard_error()
    {
        var ran = await Ran.Process(["cost", Laundry]);

        Assert.Equal(0, ran.Code);
        Assert.Empty(ran.Error);
        Assert.DoesNotContain('\u001b', ran.Out);
    }

    [Fact]
    public async Task Json_is_the_only_thing_on_standard_output()
    {
        var ran = await Ran.Process(["cost", Laundry, "--json"]);

        Assert.Equal(0, ran.Code);
        Assert.Empty(ran.Error);
        Assert.StartsWith("{", ran.Out, StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Object, ran.Json.ValueKind);
    }

    [Fact]
    public async Task A_plan_with_errors_gives_2_and_all_of_them_with_their_places()
    {
        using var plan = new PlanOnDisk(ThreeErrors);
        var ran = await Ran.Process(["check", plan.Path]);

        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Out);
        Assert.All(ran.Errors, e => Assert.Matches("^" + Regex.Escape(plan.Path) + ":[0-9]+:[0-9]+: ", e));
        Assert.Contains(ran.Errors, e => e.Contains(":6:", StringComparison.Ordinal) && e.Contains("45 kg", StringComparison.Ordinal));
        Assert.Contains(ran.Errors, e => e.Contains(":8:", StringComparison.Ordinal) && e.Contains("wats", StringComparison.Ordinal));
        Assert.Contains(ran.Errors, e => e.Contains(":10:", StringComparison.Ordinal) && e.Contains("200 kWh", StringComparison.Ordinal));
        Assert.DoesNotContain("   at ", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("check")]
    [InlineData("cost")]
    [InlineData("balance")]
    public async Task With_json_errors_are_a_document(string command)
    {
        using var plan = new PlanOnDisk(ThreeErrors);
        var ran = await Ran.Here(command, plan.Path, "--json");

        Assert.Equal(2, ran.Code);
        var errors = ran.Json.GetProperty("errors").EnumerateArray().ToList();
        Assert.Equal(ran.Errors.Length, errors.Count);
        Assert.Contains(errors, e => e.GetProperty("line").GetInt32() == 6 && e.GetProperty("read").GetString() == "45 kg" && e.GetProperty("column").GetInt32() > 1);
        Assert.All(errors, e => Assert.All(new[] { "file", "where", "problem", "mend" }, name => Assert.NotNull(e.GetProperty(name).GetString())));
    }

    [Theory]
    [InlineData("check", "no-such-plan.yaml")]
    [InlineData("open", "no-such-plan.yaml")]
    [InlineData("cost", Laundry, "--units", "imperial")]
    [InlineData("cost", Laundry, "--draws", "-3")]
    [InlineData("cost", Laundry, "--draws", "many")]
    [InlineData("cost", Laundry, "--working", "run.month.totl")]
    [InlineData("cost", Laundry, "--wat")]
    [InlineData("cost")]
    [InlineData("cots", Laundry)]
    [InlineData(Laundry)]
    [InlineData("sum", "oxigen-saturation")]
    [InlineData("sum", "oxygen-saturation", "temperature=20 kg")]
    [InlineData("sum", "oxygen-saturation", "temperature=400")]
    [InlineData("sum", "oxygen-saturation", "temperature=18 to 22 C")]
    [InlineData("sum", "oxygen-saturation", "temprature=20")]
    [InlineData("sum", "oxygen-saturation", "pressure=100 kPa")]
    [InlineData("sum", "oxygen-saturation", "20")]
    [InlineData("balance")]
    [InlineData("balance", "--from", "beds")]
    [InlineData("balance", "--beds", "4 kg")]
    [InlineData("balance", "--beds", "0")]
    [InlineData("balance", "--beds", "4m2", "--fish", "20kg")]
    [InlineData("balance", Laundry, "--beds", "4m2")]
    [InlineData("balance", Laundry, "--from", "pond")]
    public async Task What_cannot_be_read_gives_2_and_a_line_that_says_what_to_write(params string[] args)
    {
        var ran = await Ran.Here(args);

        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Out);
        Assert.NotEmpty(ran.Errors);
        Assert.All(ran.Errors, e => Assert.Contains("; ", e, StringComparison.Ordinal));
        Assert.DoesNotContain("Exception", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("run.month.totl", "run.month.total")]
    [InlineData("build.totl", "build.total")]
    public async Task A_misspelt_number_finds_its_neighbour(string written, string meant) =>
        Assert.Contains(meant, (await Ran.Here("cost", Laundry, "--working", written)).Error, StringComparison.Ordinal);

    [Fact]
    public async Task All_faults_of_a_sum_are_told_at_once()
    {
        var ran = await Ran.Here("sum", "un-ionised-ammonia", "temprature=20", "ph=99");

        Assert.Equal(4, ran.Errors.Length);
        Assert.Contains(ran.Errors, e => e.Contains("perhaps temperature", StringComparison.Ordinal));
        Assert.Contains(ran.Errors, e => e.Contains("\"99\"", StringComparison.Ordinal));
        Assert.Contains(ran.Errors, e => e.StartsWith("runnel: total:", StringComparison.Ordinal));
        Assert.Contains(ran.Errors, e => e.StartsWith("runnel: temperature:", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("check")]
    [InlineData("cost")]
    [InlineData("balance")]
    public async Task Strict_gives_3_for_a_grave_finding_and_the_answer_all_the_same(string command)
    {
        using var plan = PlanOnDisk.Example("laundry-room", ("{watts: 200 W, keep: 20 °C}", "{watts: 20 W, keep: 20 °C}"));
        var strict = await Ran.Here(command, plan.Path, "--strict");
        var lenient = await Ran.Here(command, plan.Path);

        Assert.Equal(3, strict.Code);
        Assert.Equal(0, lenient.Code);
        Assert.Equal(lenient.Out, strict.Out);
    }

    [Fact]
    public async Task Strict_gives_0_when_nothing_is_grave() => Assert.Equal(0, (await Ran.Process(["check", Laundry, "--strict"])).Code);

    [Fact]
    public async Task A_fault_of_the_program_is_one_honest_line_and_1()
    {
        static Task Breaks(string plan, int? port, CancellationToken cancel) => throw new InvalidOperationException("the lamp is out");
        var ran = await Ran.Here(Breaks, ["open", Laundry]);

        Assert.Equal(1, ran.Code);
        Assert.Contains("the lamp is out", Assert.Single(ran.Errors), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_port_that_is_taken_is_said_so()
    {
        static Task Taken(string plan, int? port, CancellationToken cancel) => throw new IOException("address already in use.");
        var ran = await Ran.Here(Taken, ["open", Laundry, "--port", "80"]);

        Assert.Equal(2, ran.Code);
        Assert.Contains("address already in use; choose another port", Assert.Single(ran.Errors), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Open_starts_the_page_on_the_plan()
    {
        (string Plan, int? Port)? started = null;
        var ran = await Ran.Here(
            (plan, port, _) =>
            {
                started = (plan, port);
                return Task.CompletedTask;
            },
            ["open", Laundry, "--port", "5123"]);

        Assert.Equal(0, ran.Code);
        Assert.Equal((Laundry, 5123), started);
    }
}
