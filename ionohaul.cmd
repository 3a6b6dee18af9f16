@echo off
rem Runs ionohaul from its source tree, building it first when something is newer than the jar.
setlocal
set "HOME_DIR=%~dp0"
set "JAR=%HOME_DIR%simulator\target\ionohaul.jar"
set "JAVA=java"
if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"

powershell -NoProfile -Command "if (-not (Test-Path $env:JAR)) { exit 1 }; $built = (Get-Item $env:JAR).LastWriteTime; $sources = @(Get-Item ($env:HOME_DIR + 'pom.xml'), ($env:HOME_DIR + 'simulator\pom.xml')) + @(Get-ChildItem -Recurse ($env:HOME_DIR + 'simulator\src\main')); if ($sources | Where-Object { $_.LastWriteTime -gt $built }) { exit 1 }"
if not errorlevel 1 goto run

echo building... 1>&2
set "LOG=%TEMP%\ionohaul-build-%RANDOM%.log"
pushd "%HOME_DIR%"
call mvnw.cmd --batch-mode --no-transfer-progress --quiet -Dmaven.test.skip -Dspotless.check.skip package >"%LOG%" 2>&1
set "RESULT=%ERRORLEVEL%"
popd
if not "%RESULT%"=="0" type "%LOG%" 1>&2
del "%LOG%"
if not "%RESULT%"=="0" (
  echo ionohaul: the build failed 1>&2
  exit /b 1
)

:run
rem Few threads: the collector with the least overhead. Many: one that keeps up with them. IONOHAUL_JAVA_OPTS comes last.
set "HEAP=-Xmx400m"
set "COLLECTOR=-XX:+UseSerialGC"
if %NUMBER_OF_PROCESSORS% GTR 4 set "HEAP=-XX:MaxRAMPercentage=25"
if %NUMBER_OF_PROCESSORS% GTR 4 set "COLLECTOR=-XX:+UseParallelGC"
rem A collector of the user's own takes the place of ours: the machine refuses two.
echo %IONOHAUL_JAVA_OPTS% %JAVA_TOOL_OPTIONS% %JDK_JAVA_OPTIONS% | findstr /R /C:"-XX:+Use.*GC" >nul && set "COLLECTOR="
"%JAVA%" %HEAP% %COLLECTOR% %IONOHAUL_JAVA_OPTS% -jar "%JAR%" %*
exit /b %ERRORLEVEL%
