@echo off
rem Starts Treen from any folder: finds a Java and builds the jar when it is missing. Unlike the launcher for
rem other systems it does not compare the jar with the sources, which cmd cannot do quickly: after a change run
rem   mvnw -q -Dquick -Dmaven.test.skip -pl lsp -am package
setlocal EnableExtensions DisableDelayedExpansion
set "ROOT=%~dp0"
set "JAR=%ROOT%lsp\target\treen.jar"
set "CACHE=%ROOT%lsp\target\start.aot"
set "FOUND="

if defined JAVA_HOME call :fits "%JAVA_HOME%"
if not defined FOUND for /f "delims=" %%j in ('where java 2^>nul') do if not defined FOUND for %%h in ("%%~dpj..") do call :fits "%%~fh"
if not defined FOUND for %%v in ("%ProgramFiles%\Java" "%ProgramFiles%\Eclipse Adoptium" "%ProgramFiles%\Microsoft" "%ProgramFiles%\Zulu" "%ProgramFiles%\BellSoft" "%ProgramFiles%\Amazon Corretto" "%LOCALAPPDATA%\Programs\Eclipse Adoptium" "%USERPROFILE%\.jdks") do for /d %%h in ("%%~v\*") do if not defined FOUND call :fits "%%~h"

if not defined FOUND (
    echo treen: needs Java 25 or newer and found none. 1>&2
    echo Install a JDK 25 or newer, for example Eclipse Temurin 25. 1>&2
    echo When it is in an unusual place, set JAVA_HOME to its folder. 1>&2
    exit /b 2
)

if exist "%JAR%" goto run
echo treen: building Treen first ^(this takes some minutes: Maven fetches what the build needs^) 1>&2
if exist "%FOUND%\bin\javac.exe" set "JAVA_HOME=%FOUND%"
pushd "%ROOT%"
rem The language server's client listens on standard output, so nothing but the server may write there.
call mvnw.cmd -q -Dquick -Dmaven.test.skip -pl lsp -am package 1>&2 <nul
set "BUILT=%ERRORLEVEL%"
popd
if not "%BUILT%"=="0" (
    echo treen: the build failed, as told above; 'mvnw verify' in %ROOT% says more 1>&2
    exit /b 2
)
"%FOUND%\bin\java.exe" -XX:+UseSerialGC "-XX:AOTCacheOutput=%CACHE%" -Xlog:disable -Xlog:all=off -jar "%JAR%" --warm-up >nul 2>&1 <nul

:run
set "FLAGS=-XX:+UseSerialGC"
rem The server lives long, so it gets the better compiler; a command is over before that one would pay, but for measurements.
if "%~1"=="lsp" (set "FLAGS=%FLAGS% -Xmn192m") else if not "%~1"=="bench" (set "FLAGS=%FLAGS% -XX:TieredStopAtLevel=1")
if exist "%CACHE%" (
    "%FOUND%\bin\java.exe" %FLAGS% "-XX:AOTCache=%CACHE%" -Xlog:disable -Xlog:all=off -jar "%JAR%" %*
) else (
    "%FOUND%\bin\java.exe" %FLAGS% -Xlog:disable -Xlog:all=off -jar "%JAR%" %*
)
exit /b %ERRORLEVEL%

rem :fits HOME sets FOUND when HOME holds a Java that is new enough, as its release file says.
:fits
if not exist "%~1\bin\java.exe" exit /b 0
if not exist "%~1\release" exit /b 0
set "MAJOR=0"
for /f "usebackq tokens=1,2 delims==." %%a in ("%~1\release") do if "%%a"=="JAVA_VERSION" set "MAJOR=%%~b"
set "MAJOR=%MAJOR:"=%"
if %MAJOR% GEQ 25 set "FOUND=%~1"
exit /b 0
