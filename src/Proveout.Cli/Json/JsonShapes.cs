using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Proveout.Cli;

/// <summary>Every shape that is written as JSON: docs/json.md describes them.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, DefaultIgnoreCondition = JsonIgnoreCondition.Never)]
[JsonSerializable(typeof(RefusalShape))]
[JsonSerializable(typeof(ReviewShape))]
[JsonSerializable(typeof(WireListShape))]
[JsonSerializable(typeof(WireImportShape))]
[JsonSerializable(typeof(ComparisonShape))]
[JsonSerializable(typeof(PlanShape))]
[JsonSerializable(typeof(CheckTableShape))]
[JsonSerializable(typeof(EnergisingShape))]
[JsonSerializable(typeof(BeltsShape))]
[JsonSerializable(typeof(AirShape))]
[JsonSerializable(typeof(HeatShape))]
[JsonSerializable(typeof(SettingsShape))]
[JsonSerializable(typeof(StagesShape))]
[JsonSerializable(typeof(AcceptanceShape))]
[JsonSerializable(typeof(HeatLogShape))]
[JsonSerializable(typeof(WalkShape))]
[JsonSerializable(typeof(AnswerShape))]
[JsonSerializable(typeof(BothWaysShape))]
[JsonSerializable(typeof(PlugStatesShape))]
[JsonSerializable(typeof(DiagnosisShape))]
[JsonSerializable(typeof(BuildsShape))]
[JsonSerializable(typeof(BuildShape))]
[JsonSerializable(typeof(MachineBuildsShape))]
[JsonSerializable(typeof(RehearsalShape))]
[JsonSerializable(typeof(ReportShape))]
[JsonSerializable(typeof(BookShape))]
[JsonSerializable(typeof(SchedulesShape))]
[JsonSerializable(typeof(DrawingsShape))]
[JsonSerializable(typeof(VerificationShape))]
[JsonSerializable(typeof(BackupShape))]
[JsonSerializable(typeof(RestoreShape))]
[JsonSerializable(typeof(RescueShape))]
[JsonSerializable(typeof(TransferShape))]
[JsonSerializable(typeof(JournalCopyShape))]
[JsonSerializable(typeof(KeyShape))]
[JsonSerializable(typeof(SealingShape))]
[JsonSerializable(typeof(TensionShape))]
[JsonSerializable(typeof(ResonanceShape))]
[JsonSerializable(typeof(MotorShape))]
[JsonSerializable(typeof(StartedShape))]
[JsonSerializable(typeof(MeasurementShape))]
[JsonSerializable(typeof(PieceShape))]
[JsonSerializable(typeof(PieceFilesShape))]
[JsonSerializable(typeof(PeopleShape))]
[JsonSerializable(typeof(AccessNotesShape))]
[JsonSerializable(typeof(JoinShape))]
internal sealed partial class JsonShapes : JsonSerializerContext
{
    private static readonly JsonSerializerOptions Layout = new() { PropertyNamingPolicy = JsonNamingPolicy.CamelCase, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>On lines of their own, for people who look.</summary>
    public static JsonShapes Spread { get; } = new(new JsonSerializerOptions(Layout) { WriteIndented = true });

    /// <summary>On one line, for large data.</summary>
    public static JsonShapes Dense { get; } = new(new JsonSerializerOptions(Layout));
}
