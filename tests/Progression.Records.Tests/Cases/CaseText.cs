using System.Text;
using Progression.Core.Library;
using Progression.Records.Cases;
using Progression.Records.Yaml;

namespace Progression.Records.Tests.Cases;

/// <summary>A good case file in a few numbered lines, to be spoilt in one place.</summary>
internal static class CaseText
{
    public const string Good = """
        schema: case-file/1
        code: AB-12
        born: 1957-05-14
        operation:
          date: 2026-03-02
          side: left
          procedure: Knee replacement
        body_mass: 82 kg
        pads: 7.6 x 12.7 cm
        plan:
          regimen: strong-15-twice-daily
          weeks: 6
        screening:
          date: 2026-03-05
          answers:
            active-implant: no
            infection: no
        pre_op:
          date: 2026-02-16
          readings:
            quadriceps_torque: 84 Nm
        assessments:
          - date: 2026-03-05
            readings:
              flexion_active: 62 deg
              extension_active: 18 deg
              extension_passive: 8 deg
            signs:
              clot_signs: no
          - date: 2026-03-06
            readings:
              effusion: 2+
              quadriceps_force: 52 N
              lever_arm: 33 cm
        sessions:
          - date: 2026-03-06
            contractions: 10
            peak: 38 mA

        """;

    public static DateOnly Today { get; } = new(2026, 3, 9);

    public static CaseFileResult Read(string text, ClinicalLibrary? library = null) =>
        CaseFileReader.Read("case.yaml", Encoding.UTF8.GetBytes(text), library ?? SmallLibrary.Value, Today);

    /// <summary>The one problem of the good text with one piece replaced by another.</summary>
    public static FileProblem OnlyProblem(string piece, string by)
    {
        Assert.Equal(2, Good.Split(piece).Length);
        CaseFileResult result = Read(Good.Replace(piece, by, StringComparison.Ordinal));
        Assert.Null(result.Case);
        return Assert.Single(result.Problems);
    }
}
