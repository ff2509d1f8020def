namespace Runnel.Files.Photometry;

/// <summary>Errors and remarks as they are found, up to a bound.</summary>
internal sealed class Faults(string fileName)
{
    private readonly List<PlanError> errors = [];
    private readonly List<PlanError> remarks = [];

    /// <summary>Those found, in the order of the file; last the one that says that there are more.</summary>
    public IReadOnlyList<PlanError> Errors =>
        [.. errors.Take(PhotometryFile.MostErrors).OrderBy(e => e.Line).ThenBy(e => e.Column), .. errors.Skip(PhotometryFile.MostErrors)];

    public IReadOnlyList<PlanError> Remarks => remarks;

    public bool Any => errors.Count > 0;

    /// <summary>True once no more errors are taken.</summary>
    public bool Full => errors.Count > PhotometryFile.MostErrors;

    public void Error(int line, int column, string where, string read, string problem, string mend, string? file = null) =>
        Add(errors, new(file ?? fileName, line, column, where, read, problem, mend));

    public void Error(Token at, string where, string problem, string mend) => Error(at.Line, at.Column, where, at.Text, problem, mend, at.File);

    public void Remark(int line, string where, string read, string problem, string mend) =>
        Add(remarks, new(fileName, line, 1, where, read, problem, mend));

    private void Add(List<PlanError> to, PlanError fault)
    {
        if (to.Count < PhotometryFile.MostErrors)
        {
            to.Add(fault);
        }
        else if (to.Count == PhotometryFile.MostErrors)
        {
            to.Add(new(fileName, fault.Line, fault.Column, "", "", "there is more amiss from here on, which is not told", "mend what stands above first"));
        }
    }
}

/// <summary>One number of a file: where it stands, what stands there, and its value; not a number if it is none.</summary>
internal readonly record struct Token(string? File, int Line, int Column, string Text, double Value);
